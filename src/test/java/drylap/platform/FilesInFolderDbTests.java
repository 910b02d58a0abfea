package drylap.platform;

import static drylap.persistence.jooq.Tables.STORED_FILE;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.awaitility.Awaitility.await;

import drylap.DbTest;
import drylap.assembly.Method;
import drylap.pictures.SamplePictures;
import drylap.planning.JobFolders;
import drylap.progress.PhotoRequest;
import drylap.progress.PhotoResult;
import drylap.progress.Photos;
import drylap.progress.WallOfAll;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import org.jooq.DSLContext;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.context.DynamicPropertyRegistry;
import org.springframework.test.context.DynamicPropertySource;
import org.springframework.transaction.support.TransactionTemplate;

/** Files in a folder beside the database: nothing is lost and nothing is thrown away too early, whoever dies or is faster. */
@DbTest
class FilesInFolderDbTests {
    private static final Duration LONG = Duration.ofMinutes(1);

    @TempDir
    static Path home;

    @Autowired
    FileStore files;

    @Autowired
    FilesOutOfRows outOfRows;

    @Autowired
    UnusedFiles unused;

    @Autowired
    JobFolders folders;

    @Autowired
    Photos photos;

    @Autowired
    DSLContext db;

    @Autowired
    TransactionTemplate transaction;

    @Autowired
    Clock clock;

    @DynamicPropertySource
    static void in_a_folder(DynamicPropertyRegistry registry) {
        registry.add("drylap.files", () -> home.resolve("files").toString());
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    private static Path file(String digest) {
        return home.resolve("files").resolve(digest.substring(0, 2)).resolve(digest);
    }

    private String stored(String text) {
        return transaction.execute(_ -> files.put(bytes(text)));
    }

    /** As files were kept before there was a folder. */
    private String inRow(String text) {
        String digest = FileStore.digest(bytes(text));
        db.insertInto(STORED_FILE)
                .set(STORED_FILE.SHA256, digest)
                .set(STORED_FILE.CONTENT, bytes(text))
                .set(STORED_FILE.SIZE_BYTES, bytes(text).length)
                .set(STORED_FILE.STORED_AT, clock.instant())
                .execute();
        return digest;
    }

    private void age(String digest) throws IOException {
        Instant long_ago = clock.instant().minus(Duration.ofDays(2));
        db.update(STORED_FILE)
                .set(STORED_FILE.STORED_AT, long_ago)
                .where(STORED_FILE.SHA256.eq(digest))
                .execute();
        if (Files.exists(file(digest))) Files.setLastModifiedTime(file(digest), FileTime.from(long_ago));
    }

    private boolean isInRow(String digest) {
        return db.fetchExists(STORED_FILE, STORED_FILE.SHA256.eq(digest).and(STORED_FILE.CONTENT.isNotNull()));
    }

    private boolean hasRow(String digest) {
        return db.fetchExists(STORED_FILE, STORED_FILE.SHA256.eq(digest));
    }

    /** Someone may be at it in the background. */
    private void thrown_away(String digest) {
        await().atMost(LONG).until(() -> {
            unused.run();
            return !Files.exists(file(digest)) && !hasRow(digest);
        });
    }

    private void someone_waits() {
        await().atMost(LONG)
                .until(() -> db.fetchSingle("select count(*) from pg_stat_activity where datname = current_database()"
                                        + " and wait_event_type = 'Lock'")
                                .get(0, int.class)
                        > 0);
    }

    @Test
    void bytes_lie_in_a_file_of_their_digest_and_not_in_the_row() {
        String digest = stored("first");

        assertThat(file(digest)).hasBinaryContent(bytes("first"));
        assertThat(isInRow(digest)).isFalse();
        assertThat(files.get(digest)).hasValue(bytes("first"));
        assertThat(stored("first")).isEqualTo(digest);
    }

    @Test
    void a_damaged_file_is_not_given_out_and_is_mended_by_the_same_bytes() throws IOException {
        String digest = stored("whole");
        Files.writeString(file(digest), "half");

        assertThat(files.get(digest)).isEmpty();
        stored("whole");
        assertThat(files.get(digest)).hasValue(bytes("whole"));
    }

    @Test
    void an_upload_that_comes_to_nothing_leaves_a_file_that_is_thrown_away_a_day_later() throws IOException {
        String digest = FileStore.digest(bytes("nothing"));
        assertThatThrownBy(() -> transaction.execute(_ -> {
                    files.put(bytes("nothing"));
                    throw new IllegalStateException("the connection broke");
                }))
                .hasMessage("the connection broke");
        assertThat(hasRow(digest)).isFalse();

        unused.run();
        assertThat(file(digest)).exists();
        age(digest);
        thrown_away(digest);
    }

    @Test
    void files_move_from_their_rows_and_again_after_a_move_that_was_cut_short() throws IOException {
        String digest = inRow("old");
        String cutShort = inRow("cut short");
        Files.createDirectories(file(cutShort).getParent());
        Files.writeString(file(cutShort), "cut");
        assertThat(files.get(digest)).hasValue(bytes("old"));

        await().atMost(LONG).until(() -> {
            outOfRows.run();
            return !isInRow(digest) && !isInRow(cutShort);
        });

        assertThat(files.get(digest)).hasValue(bytes("old"));
        assertThat(files.get(cutShort)).hasValue(bytes("cut short"));
        assertThat(file(cutShort)).hasBinaryContent(bytes("cut short"));
    }

    /** In a transaction of its own, so that whoever moves files in the background does not see the row. */
    @Test
    void a_row_keeps_its_bytes_where_they_cannot_be_written() {
        var full = FileFolder.in(home.resolve("full"));
        var toFull = new FilesOutOfRows(db, transaction, clock, new FileShelf(Optional.of(full)));

        transaction.executeWithoutResult(status -> {
            String digest = inRow("not written");
            inTheWay(full.root().resolve(digest.substring(0, 2)));

            assertThatExceptionOfType(UncheckedIOException.class).isThrownBy(toFull::run);
            assertThat(isInRow(digest)).isTrue();
            assertThat(files.get(digest)).hasValue(bytes("not written"));
            status.setRollbackOnly();
        });
    }

    private static void inTheWay(Path of) {
        try {
            Files.writeString(of, "in the way");
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    @Test
    void what_a_photo_refers_to_stays_and_what_nothing_refers_to_goes_after_a_day() throws IOException {
        var folder = folders.save("wall", WallOfAll.folder());
        var request = new PhotoRequest(
                UUID.randomUUID(),
                folder,
                WallOfAll.plain(Method.B),
                Instant.parse("2026-04-13T19:00:00Z"),
                SamplePictures.named("orientation-1.jpg"));
        var photo = ((PhotoResult.Stored) photos.add(WallOfAll.WINDOW, request)).photo();
        String thumbnail = photo.looked().orElseThrow().thumbnail();
        String young = stored("young");
        String old = stored("old and unused");
        for (String digest : new String[] {photo.sha256(), thumbnail, old}) age(digest);

        thrown_away(old);

        assertThat(file(photo.sha256())).exists();
        assertThat(file(thumbnail)).exists();
        assertThat(file(young)).exists();
        assertThat(photos.thumbnail(WallOfAll.WRAP, request.id())).isPresent();
    }

    @Test
    void what_is_being_uploaded_again_is_not_thrown_away() throws IOException {
        String digest = stored("again");
        age(digest);

        transaction.executeWithoutResult(_ -> {
            files.put(bytes("again"));
            assertThat(CompletableFuture.supplyAsync(() -> unused.drop(digest)).join())
                    .isFalse();
        });

        assertThat(file(digest)).exists();
    }

    @Test
    void an_upload_waits_for_whoever_throws_the_same_bytes_away_and_then_writes_them_anew() {
        String digest = stored("thrown away");
        var upload = transaction.execute(_ -> {
            assertThat(unused.drop(digest)).isTrue();
            var waiting = CompletableFuture.supplyAsync(() -> stored("thrown away"));
            someone_waits();
            assertThat(file(digest)).doesNotExist();
            return waiting;
        });

        assertThat(upload.orTimeout(1, TimeUnit.MINUTES).join()).isEqualTo(digest);
        assertThat(file(digest)).exists();
        assertThat(hasRow(digest)).isTrue();
    }

    @Test
    void a_file_whose_row_is_not_yet_committed_is_no_stray() {
        String digest = FileStore.digest(bytes("not yet"));
        var dropped = transaction.execute(_ -> {
            files.put(bytes("not yet"));
            var waiting = CompletableFuture.supplyAsync(() -> unused.dropStray(digest));
            someone_waits();
            return waiting;
        });

        assertThat(dropped.orTimeout(1, TimeUnit.MINUTES).join()).isFalse();
        assertThat(file(digest)).exists();
    }

    @Test
    void what_was_being_written_when_a_process_died_is_swept_away() throws IOException {
        Path half = home.resolve("files/half-written/one");
        Files.writeString(half, "ha");
        unused.run();
        assertThat(half).exists();

        Files.setLastModifiedTime(half, FileTime.from(clock.instant().minus(Duration.ofDays(2))));
        unused.run();
        assertThat(half).doesNotExist();
    }

    @Test
    void a_database_starts_with_its_own_folder_only() throws IOException {
        var claim = new FileFolderClaim(db, transaction, clock);
        claim.of(FileFolder.in(home.resolve("files")));

        assertThatExceptionOfType(DatabaseTrouble.class)
                .isThrownBy(() -> claim.of(FileFolder.in(home.resolve("empty"))))
                .withMessageContaining("has no mark");
        var others = FileFolder.in(home.resolve("others"));
        Files.writeString(
                others.root().resolve("of-database.txt"), UUID.randomUUID().toString());
        assertThatExceptionOfType(DatabaseTrouble.class)
                .isThrownBy(() -> claim.of(others))
                .withMessageContaining("does not hold the photos of this database");
        assertThatExceptionOfType(DatabaseTrouble.class)
                .isThrownBy(claim::ofNone)
                .matches(trouble -> trouble.remedy().contains("DRYLAP_FILES"));
    }

    @Test
    void a_folder_that_cannot_be_written_is_said_at_the_start() throws IOException {
        Path inTheWay = Files.writeString(home.resolve("in-the-way"), "");

        assertThatExceptionOfType(DatabaseTrouble.class)
                .isThrownBy(() -> FileFolder.in(inTheWay))
                .matches(trouble -> trouble.remedy().contains("DRYLAP_FILES"));
    }
}
