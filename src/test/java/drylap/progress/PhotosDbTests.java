package drylap.progress;

import static drylap.persistence.jooq.Tables.PHOTO;
import static drylap.persistence.jooq.Tables.STORED_FILE;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import drylap.DbTest;
import drylap.assembly.Method;
import drylap.kernel.FolderId;
import drylap.kernel.OpeningId;
import drylap.planning.JobFolders;
import drylap.platform.FileStore;
import drylap.progress.PhotoResult.AlreadyStored;
import drylap.progress.PhotoResult.Refused;
import drylap.progress.PhotoResult.Stored;
import drylap.security.NotAllowed;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.Arrays;
import java.util.UUID;
import javax.imageio.ImageIO;
import org.jooq.DSLContext;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;

@DbTest
class PhotosDbTests {
    private static final OpeningId OPENING = WallOfAll.plain(Method.B);
    private static final Instant NOON = Instant.parse("2026-04-13T19:00:00Z");

    @Autowired
    JobFolders folders;

    @Autowired
    Photos photos;

    @Autowired
    FileStore files;

    @Autowired
    DSLContext db;

    FolderId folder = new FolderId(0);

    @BeforeEach
    void store_the_folder() {
        folder = folders.save("wall", WallOfAll.folder());
    }

    private PhotoRequest request(byte[] content) {
        return new PhotoRequest(UUID.randomUUID(), folder, OPENING, NOON, content);
    }

    /** Written by the JDK's own encoders, so that the signatures are not ours. */
    private static byte[] picture(String format) throws IOException {
        var out = new ByteArrayOutputStream();
        ImageIO.write(new BufferedImage(4, 3, BufferedImage.TYPE_INT_RGB), format, out);
        return out.toByteArray();
    }

    private static byte[] jpegOf(int size) throws IOException {
        return Arrays.copyOf(picture("jpg"), size);
    }

    private static byte[] webp() {
        return "RIFF\u0010\0\0\0WEBPVP8 ".getBytes(StandardCharsets.ISO_8859_1);
    }

    @ParameterizedTest
    @CsvSource({"jpg,image/jpeg", "png,image/png"})
    void a_photo_comes_back_as_it_was_sent(String format, String type) throws IOException {
        byte[] content = picture(format);

        var result = photos.add(WallOfAll.WINDOW, request(content));

        assertThat(result).isInstanceOfSatisfying(Stored.class, stored -> {
            assertThat(stored.photo().type().code()).isEqualTo(type);
            assertThat(photos.content(WallOfAll.WRAP, stored.photo().id()))
                    .hasValueSatisfying(found -> assertThat(found.bytes()).isEqualTo(content));
            assertThat(photos.of(WallOfAll.SCHEDULER, folder, OPENING)).containsExactly(stored.photo());
        });
    }

    @Test
    void a_webp_is_known_by_its_container() {
        assertThat(photos.add(WallOfAll.WINDOW, request(webp()))).isInstanceOf(Stored.class);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "<svg xmlns='x'/>", "GIF89a......", "\u00ff\u00d8", "RIFF....WAVE", "%PDF-1.7"})
    void what_is_no_photo_is_refused_whatever_it_is_called(String content) {
        assertThat(photos.add(WallOfAll.WINDOW, request(content.getBytes(StandardCharsets.ISO_8859_1))))
                .isInstanceOfSatisfying(
                        Refused.class, refused -> assertThat(refused.words()).contains("accepted: JPEG, PNG, WebP"));
        assertThat(db.fetchCount(PHOTO, PHOTO.FOLDER_ID.eq(folder.value()))).isZero();
    }

    @Test
    void a_photo_has_at_most_8_mb() throws IOException {
        assertThat(photos.add(WallOfAll.WINDOW, request(jpegOf(Photos.MOST_BYTES))))
                .isInstanceOf(Stored.class);
        assertThat(photos.add(WallOfAll.WINDOW, request(jpegOf(Photos.MOST_BYTES + 1))))
                .isInstanceOfSatisfying(
                        Refused.class, refused -> assertThat(refused.words()).contains("accepted: up to 8 MB"));
    }

    @Test
    void a_photo_sent_twice_is_one_photo_and_the_same_bytes_are_kept_once() throws IOException {
        var request = request(picture("png"));
        photos.add(WallOfAll.WINDOW, request);

        assertThat(photos.add(WallOfAll.WINDOW, request)).isInstanceOf(AlreadyStored.class);
        photos.add(WallOfAll.WINDOW, request(request.content()));

        assertThat(db.fetchCount(PHOTO, PHOTO.FOLDER_ID.eq(folder.value()))).isEqualTo(2);
        assertThat(db.fetchCount(STORED_FILE, STORED_FILE.SHA256.eq(FileStore.digest(request.content()))))
                .isEqualTo(1);
    }

    @Test
    void a_key_that_was_used_for_another_photo_is_refused() throws IOException {
        var first = request(picture("png"));
        photos.add(WallOfAll.WINDOW, first);

        assertThat(photos.add(WallOfAll.WINDOW, new PhotoRequest(first.id(), folder, OPENING, NOON, picture("jpg"))))
                .isInstanceOf(Refused.class);
    }

    @Test
    void someone_of_another_site_neither_adds_nor_sees_a_photo() throws IOException {
        var request = request(picture("png"));
        photos.add(WallOfAll.WINDOW, request);

        assertThat(photos.content(WallOfAll.ELSEWHERE, request.id())).isEmpty();
        assertThat(photos.of(WallOfAll.ELSEWHERE, folder, OPENING)).isEmpty();
        assertThatExceptionOfType(NotAllowed.class).isThrownBy(() -> photos.add(WallOfAll.ELSEWHERE, request));
        assertThatExceptionOfType(NotAllowed.class)
                .isThrownBy(() -> photos.content(WallOfAll.ADMINISTRATOR, request.id()));
    }

    /** SHA-256 of "abc", FIPS 180-2 appendix B.1. */
    @Test
    void bytes_are_found_under_their_sha_256() {
        byte[] abc = "abc".getBytes(StandardCharsets.US_ASCII);

        assertThat(files.put(abc)).isEqualTo("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
        assertThat(files.get(FileStore.digest(abc))).hasValue(abc);
        assertThat(files.get("0".repeat(64))).isEmpty();
    }
}
