package drylap.progress;

import static drylap.persistence.jooq.Tables.PHOTO;
import static drylap.persistence.jooq.Tables.STORED_FILE;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import com.drew.imaging.ImageMetadataReader;
import com.drew.metadata.exif.GpsDirectory;
import drylap.DbTest;
import drylap.assembly.Method;
import drylap.kernel.CrewId;
import drylap.kernel.FolderId;
import drylap.kernel.OpeningId;
import drylap.kernel.PersonId;
import drylap.kernel.Reach;
import drylap.pictures.SamplePictures;
import drylap.planning.JobFolders;
import drylap.platform.FileStore;
import drylap.progress.PhotoResult.AlreadyStored;
import drylap.progress.PhotoResult.Refused;
import drylap.progress.PhotoResult.Stored;
import drylap.security.NotAllowed;
import drylap.security.Person;
import drylap.security.Role;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.UUID;
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
    private static final Person OTHER_SITES_SIDING = new Person(
            new PersonId(8),
            "siding8",
            "Siding of the south",
            Role.FOLLOW_ON,
            Reach.of(Set.of(WallOfAll.SOUTH)),
            new CrewId("siding-crew"),
            false);
    private static final Instant NOON = Instant.parse("2026-04-13T19:00:00Z");

    @Autowired
    JobFolders folders;

    @Autowired
    Photos photos;

    @Autowired
    PhotoPlaces places;

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

    private static byte[] picture(String format) {
        return SamplePictures.drawn(format, 4, 3);
    }

    private static byte[] jpegOf(int size) {
        return Arrays.copyOf(picture("jpg"), size);
    }

    @ParameterizedTest
    @CsvSource({"jpg,image/jpeg", "png,image/png"})
    void a_photo_comes_back_as_it_was_sent(String format, String type) {
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
        assertThat(photos.add(WallOfAll.WINDOW, request(SamplePictures.named("plain.webp"))))
                .isInstanceOf(Stored.class);
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
    void a_photo_has_at_most_8_mb() {
        assertThat(photos.add(WallOfAll.WINDOW, request(jpegOf(Photos.MOST_BYTES))))
                .isInstanceOf(Stored.class);
        assertThat(photos.add(WallOfAll.WINDOW, request(jpegOf(Photos.MOST_BYTES + 1))))
                .isInstanceOfSatisfying(
                        Refused.class, refused -> assertThat(refused.words()).contains("accepted: up to 8 MB"));
    }

    @Test
    void a_photo_sent_twice_is_one_photo_and_the_same_bytes_are_kept_once() {
        var request = request(picture("png"));
        photos.add(WallOfAll.WINDOW, request);

        assertThat(photos.add(WallOfAll.WINDOW, request)).isInstanceOf(AlreadyStored.class);
        photos.add(WallOfAll.WINDOW, request(request.content()));

        assertThat(db.fetchCount(PHOTO, PHOTO.FOLDER_ID.eq(folder.value()))).isEqualTo(2);
        assertThat(db.selectDistinct(PHOTO.SHA256)
                        .from(PHOTO)
                        .where(PHOTO.FOLDER_ID.eq(folder.value()))
                        .fetch(PHOTO.SHA256))
                .singleElement()
                .satisfies(digest -> assertThat(db.fetchCount(STORED_FILE, STORED_FILE.SHA256.eq(digest)))
                        .isEqualTo(1));
    }

    @Test
    void a_key_that_was_used_for_another_photo_is_refused() {
        var first = request(picture("png"));
        photos.add(WallOfAll.WINDOW, first);

        assertThat(photos.add(WallOfAll.WINDOW, new PhotoRequest(first.id(), folder, OPENING, NOON, picture("jpg"))))
                .isInstanceOf(Refused.class);
    }

    @Test
    void someone_of_another_site_neither_adds_nor_sees_a_photo() {
        var request = request(picture("png"));
        photos.add(WallOfAll.WINDOW, request);

        assertThat(photos.content(WallOfAll.ELSEWHERE, request.id())).isEmpty();
        assertThat(photos.of(WallOfAll.ELSEWHERE, folder, OPENING)).isEmpty();
        assertThat(photos.thumbnail(WallOfAll.ELSEWHERE, request.id())).isEmpty();
        assertThat(photos.thumbnail(OTHER_SITES_SIDING, request.id())).isEmpty();
        assertThat(photos.content(OTHER_SITES_SIDING, request.id())).isEmpty();
        assertThat(photos.thumbnail(WallOfAll.SIDING, request.id())).isPresent();
        assertThatExceptionOfType(NotAllowed.class).isThrownBy(() -> photos.add(WallOfAll.ELSEWHERE, request));
        assertThatExceptionOfType(NotAllowed.class)
                .isThrownBy(() -> photos.thumbnail(WallOfAll.ADMINISTRATOR, request.id()));
        assertThatExceptionOfType(NotAllowed.class)
                .isThrownBy(() -> photos.content(WallOfAll.ADMINISTRATOR, request.id()));
    }

    @Test
    void a_photo_loses_its_place_unless_its_site_keeps_it() throws Exception {
        byte[] sent = SamplePictures.named("orientation-6.jpg");
        assertThat(placeIn(added(sent))).isFalse();

        places.keep(WallOfAll.SCHEDULER, folder, WallOfAll.NORTH, true);
        assertThat(placeIn(added(sent))).isTrue();
        assertThat(places.keptAt(folder, WallOfAll.SOUTH)).isFalse();

        places.keep(WallOfAll.SCHEDULER, folder, WallOfAll.NORTH, false);
        assertThat(placeIn(added(sent))).isFalse();
        assertThatExceptionOfType(NotAllowed.class)
                .isThrownBy(() -> places.keep(WallOfAll.WINDOW, folder, WallOfAll.NORTH, true));
    }

    private byte[] added(byte[] sent) {
        var request = request(sent);
        photos.add(WallOfAll.WINDOW, request);
        return photos.content(WallOfAll.WRAP, request.id()).orElseThrow().bytes();
    }

    private static boolean placeIn(byte[] photo) throws Exception {
        return ImageMetadataReader.readMetadata(new ByteArrayInputStream(photo))
                .containsDirectoryOfType(GpsDirectory.class);
    }

    @Test
    void a_photo_sent_again_is_the_same_though_its_site_keeps_places_by_now() {
        var request = request(SamplePictures.named("orientation-1.jpg"));
        photos.add(WallOfAll.WINDOW, request);
        places.keep(WallOfAll.SCHEDULER, folder, WallOfAll.NORTH, true);

        assertThat(photos.add(WallOfAll.WINDOW, request)).isInstanceOf(AlreadyStored.class);
    }

    @Test
    void a_photo_knows_its_size_as_it_is_seen() {
        var request = request(SamplePictures.named("orientation-6.jpg"));

        assertThat(photos.add(WallOfAll.WINDOW, request)).isInstanceOfSatisfying(Stored.class, stored -> {
            var looked = stored.photo().looked().orElseThrow();
            assertThat(List.of(looked.widthPx(), looked.heightPx())).containsExactly(64, 32);
        });
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
