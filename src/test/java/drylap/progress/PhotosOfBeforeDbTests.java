package drylap.progress;

import static drylap.persistence.jooq.Tables.PHOTO;
import static drylap.persistence.jooq.Tables.STORED_FILE;
import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import com.drew.imaging.ImageMetadataReader;
import com.drew.metadata.exif.GpsDirectory;
import drylap.DbTest;
import drylap.assembly.Method;
import drylap.kernel.FolderId;
import drylap.pictures.SamplePictures;
import drylap.planning.JobFolders;
import drylap.platform.FileStore;
import drylap.platform.TestDatabase;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.sql.DriverManager;
import java.time.Duration;
import java.time.Instant;
import java.util.UUID;
import org.flywaydb.core.Flyway;
import org.jooq.DSLContext;
import org.jooq.SQLDialect;
import org.jooq.impl.DSL;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

/** Photos that were kept before photos were looked at. */
@DbTest
class PhotosOfBeforeDbTests {
    private static final Instant NOON = Instant.parse("2026-04-13T19:00:00Z");

    @Autowired
    JobFolders folders;

    @Autowired
    Photos photos;

    @Autowired
    PhotosLookedAt lookedAt;

    @Autowired
    DSLContext db;

    private UUID kept(FolderId folder, byte[] sent, String type) {
        String digest = FileStore.digest(sent);
        db.insertInto(STORED_FILE)
                .set(STORED_FILE.SHA256, digest)
                .set(STORED_FILE.CONTENT, sent)
                .set(STORED_FILE.SIZE_BYTES, sent.length)
                .set(STORED_FILE.STORED_AT, NOON)
                .onConflictDoNothing()
                .execute();
        UUID id = UUID.randomUUID();
        db.insertInto(PHOTO)
                .set(PHOTO.ID, id)
                .set(PHOTO.FOLDER_ID, folder.value())
                .set(PHOTO.OPENING, WallOfAll.plain(Method.B).value())
                .set(PHOTO.SITE, WallOfAll.NORTH.value())
                .set(PHOTO.PERSON_ID, 2L)
                .set(PHOTO.PERSON, "Window")
                .set(PHOTO.TAKEN_AT, NOON)
                .set(PHOTO.RECEIVED_AT, NOON)
                .set(PHOTO.SENT_SHA256, digest)
                .set(PHOTO.SHA256, digest)
                .set(PHOTO.MEDIA_TYPE, type)
                .set(PHOTO.SIZE_BYTES, sent.length)
                .execute();
        return id;
    }

    private void look_until(UUID id, org.jooq.Condition done) {
        await().atMost(Duration.ofMinutes(1)).until(() -> {
            lookedAt.run();
            return db.fetchExists(PHOTO, PHOTO.ID.eq(id).and(done));
        });
    }

    @Test
    void they_lose_their_place_and_get_a_small_copy_later() throws Exception {
        var folder = folders.save("wall", WallOfAll.folder());
        byte[] sent = SamplePictures.named("orientation-6.jpg");
        UUID id = kept(folder, sent, "image/jpeg");

        look_until(id, PHOTO.WIDTH_PX.isNotNull());

        var photo = photos.content(WallOfAll.WRAP, id).orElseThrow();
        assertThat(ImageMetadataReader.readMetadata(new ByteArrayInputStream(photo.bytes()))
                        .containsDirectoryOfType(GpsDirectory.class))
                .isFalse();
        assertThat(photo.photo().looked().orElseThrow().widthPx()).isEqualTo(64);
        assertThat(photos.add(WallOfAll.WINDOW, new PhotoRequest(id, folder, WallOfAll.plain(Method.B), NOON, sent)))
                .isInstanceOf(PhotoResult.AlreadyStored.class);
    }

    @Test
    void one_that_cannot_be_decoded_stays_as_it_came() {
        var folder = folders.save("wall", WallOfAll.folder());
        byte[] sent = "\u00ff\u00d8\u00ff no picture".getBytes(StandardCharsets.ISO_8859_1);
        UUID id = kept(folder, sent, "image/jpeg");

        look_until(id, PHOTO.UNDECODABLE.isTrue());

        assertThat(photos.content(WallOfAll.WRAP, id).orElseThrow().bytes()).isEqualTo(sent);
        assertThat(photos.thumbnail(WallOfAll.WRAP, id).orElseThrow().bytes()).isEqualTo(sent);
    }

    /** The tables as they were before V0039, with a file in them, then brought up to date. */
    @Test
    void the_migration_keeps_every_byte() throws Exception {
        String url = TestDatabase.empty();
        flyway(url, "0034").migrate();
        try (var connection = DriverManager.getConnection(url, "postgres", "")) {
            var old = DSL.using(connection, SQLDialect.POSTGRES);
            old.execute(
                    "insert into stored_file (sha256, content, stored_at) values (repeat('a', 64), 'abc'::bytea, now())");

            flyway(url, "latest").migrate();

            var row = old.fetchSingle("select * from stored_file");
            assertThat(row.get("content", byte[].class)).isEqualTo("abc".getBytes(StandardCharsets.US_ASCII));
            assertThat(row.get("size_bytes", int.class)).isEqualTo(3);
        }
    }

    private static Flyway flyway(String url, String target) {
        return Flyway.configure().dataSource(url, "postgres", "").target(target).load();
    }
}
