package drylap.keeping;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import drylap.DbTest;
import drylap.demo.SampleForTests;
import drylap.kernel.Sha256;
import drylap.platform.DatabasePlace;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.UUID;
import javax.sql.DataSource;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.beans.factory.annotation.Autowired;

/** The sample week and a photo go through a backup; PostgreSQL itself says whether rows are the same, Java's own files whether bytes are. */
@DbTest
@SampleForTests
class RestoreDrillDbTests {
    @Autowired
    DataSource source;

    @TempDir
    Path folder;

    String url = "";
    Path files = Path.of("");
    Path backup = Path.of("");

    @BeforeEach
    void look_where_the_sample_is() throws SQLException, IOException {
        try (Connection connection = source.getConnection()) {
            url = connection.getMetaData().getURL();
        }
        files = folder.resolve("files");
        Files.createDirectories(files.resolve("ab"));
        Files.writeString(files.resolve("ab/abcd"), "a photo");
        Files.createDirectories(files.resolve("half-written"));
        Files.writeString(files.resolve("half-written/1"), "half a pho");
        backup = folder.resolve("drylap.backup");
    }

    @Test
    void what_is_restored_is_what_was_there() throws Exception {
        var kept = Backups.write(place(url, files), backup, Clock.systemUTC());
        String other = emptyDatabase();
        Path otherFiles = folder.resolve("restored");
        assertThat(Backups.restore(backup, place(other, otherFiles))).isEqualTo(kept);

        // the sample's database works on in the background; these of its tables rest
        assertThat(contents(other))
                .containsAllEntriesOf(only(contents(url), "opening", "step_mark", "person", "rule_value"));
        assertThat(count(other, "step_mark")).isPositive();
        assertThat(otherFiles.resolve("ab/abcd")).hasContent("a photo");
        assertThat(otherFiles.resolve("half-written")).doesNotExist();
    }

    @Test
    void what_is_restored_twice_is_the_same_in_every_table() throws Exception {
        Backups.write(place(url, files), backup, Clock.systemUTC());
        String once = emptyDatabase();
        Backups.restore(backup, place(once, folder.resolve("once")));
        Path second = folder.resolve("second");
        Backups.write(place(once, folder.resolve("once")), second, Clock.systemUTC());
        String twice = emptyDatabase();
        Backups.restore(second, place(twice, folder.resolve("twice")));

        assertThat(contents(twice)).isEqualTo(contents(once));
        assertThat(sequences(twice)).isEqualTo(sequences(once));
    }

    private static Map<String, String> only(Map<String, String> contents, String... tables) {
        Map<String, String> some = new TreeMap<>(contents);
        some.keySet().retainAll(List.of(tables));
        return some;
    }

    @Test
    void what_guards_the_tables_guards_them_again() throws Exception {
        Backups.write(place(url, files), backup, Clock.systemUTC());
        String other = emptyDatabase();
        Backups.restore(backup, place(other, folder.resolve("restored")));

        assertThatExceptionOfType(SQLException.class)
                .isThrownBy(() -> execute(other, "update step_mark set line = line"))
                .withMessageContaining("only grows");
        execute(other, "insert into change_log (at, person, what) values (now(), 'somebody', 'something')");
        assertThatExceptionOfType(SQLException.class)
                .isThrownBy(() -> execute(other, "update change_log set what = 'nothing'"))
                .withMessageContaining("only grows");
    }

    @Test
    void a_row_that_comes_while_the_backup_is_written_is_in_it_wholly_or_not_at_all() throws Exception {
        Thread busy = Thread.ofVirtual().start(() -> {
            for (int i = 0; i < 200; i++)
                execute(
                        url,
                        "begin; insert into change_log (at, person, what) values (now(), 'first of two', 'x');"
                                + " insert into change_log (at, person, what) values (now(), 'second of two', 'x'); commit");
        });
        Backups.write(place(url, files), backup, Clock.systemUTC());
        busy.join();

        String other = emptyDatabase();
        Backups.restore(backup, place(other, folder.resolve("restored")));
        assertThat(count(other, "change_log where person = 'first of two'"))
                .isEqualTo(count(other, "change_log where person = 'second of two'"));
    }

    @Test
    void nothing_is_written_over() throws Exception {
        Files.writeString(backup, "somebody's");
        assertThatExceptionOfType(BackupTrouble.class)
                .isThrownBy(() -> Backups.write(place(url, files), backup, Clock.systemUTC()))
                .withMessageContaining("is there already");
        assertThat(backup).hasContent("somebody's");

        Path whole = folder.resolve("whole");
        Backups.write(place(url, files), whole, Clock.systemUTC());
        assertThatExceptionOfType(BackupTrouble.class)
                .isThrownBy(() -> Backups.restore(whole, place(url, folder.resolve("restored"))))
                .withMessageContaining("the database has tables already");
        assertThatExceptionOfType(BackupTrouble.class)
                .isThrownBy(() -> Backups.restore(whole, place(emptyDatabase(), files)))
                .withMessageContaining("there are files in");
    }

    @Test
    void what_is_no_backup_is_refused() throws Exception {
        assertRefused(Files.writeString(backup, "no zip at all"), "is no backup or was cut off");

        Path whole = folder.resolve("whole");
        Backups.write(place(url, files), whole, Clock.systemUTC());
        byte[] bytes = Files.readAllBytes(whole);
        assertRefused(
                Files.write(folder.resolve("cut"), java.util.Arrays.copyOf(bytes, bytes.length / 2)),
                "is no backup or was cut off");
        assertRefused(changed(copy(whole), "tables/change_log", "1\t2026-01-01\n"), "tables/change_log");
        assertRefused(changed(copy(whole), "files/ab/abcd", "another"), "files/ab/abcd");
        assertRefused(changed(copy(whole), "manifest.json", "{}"), "cannot be read");
        assertRefused(
                changed(copy(whole), "manifest.json", text(whole).replaceFirst("\"format\" *: *1", "\"format\":2")),
                "has format 2");
        assertRefused(changed(copy(whole), "manifest.json", "{\"format\":"), "cannot be read");
        assertRefused(
                changed(
                        copy(whole),
                        "manifest.json",
                        text(whole).replaceFirst("\"schema\" *: *\"[0-9]+\"", "\"schema\":\"9999\"")),
                "from a later version");
    }

    /** A value that no column takes lets copying fail when other tables are full already. */
    @Test
    void what_fails_half_way_leaves_nothing() throws Exception {
        Backups.write(place(url, files), backup, Clock.systemUTC());
        String rows = "no number\t2026-01-01 00:00:00+00\t\\N\tsomebody\t\\N\tsomething\n";
        changed(backup, "tables/change_log", rows);
        String sha256 = java.util.HexFormat.of().formatHex(Sha256.of(rows.getBytes(StandardCharsets.UTF_8)));
        String manifest = text(backup);
        int at = manifest.indexOf("\"sha256\"", manifest.indexOf("\"name\" : \"change_log\""));
        changed(
                backup,
                "manifest.json",
                manifest.substring(0, at) + manifest.substring(at).replaceFirst("[0-9a-f]{64}", sha256));

        String other = emptyDatabase();
        Path otherFiles = folder.resolve("restored");
        assertThatExceptionOfType(SQLException.class)
                .isThrownBy(() -> Backups.restore(backup, place(other, otherFiles)));
        assertThat(contents(other)).isEmpty();
        assertThat(otherFiles.resolve("ab/abcd")).doesNotExist();

        assertThat(Backups.restore(whole(), place(other, otherFiles)).rows()).isPositive();
    }

    private Path whole() throws Exception {
        Path whole = folder.resolve("whole");
        Backups.write(place(url, files), whole, Clock.systemUTC());
        return whole;
    }

    private void assertRefused(Path file, String why) throws SQLException {
        String other = emptyDatabase();
        assertThatExceptionOfType(BackupTrouble.class)
                .isThrownBy(() -> Backups.restore(file, place(other, folder.resolve("restored"))))
                .withMessageContaining(why);
        assertThat(contents(other)).isEmpty();
    }

    private static String text(Path zip) throws IOException {
        try (FileSystem within = FileSystems.newFileSystem(zip)) {
            return Files.readString(within.getPath("manifest.json"));
        }
    }

    private Path copy(Path zip) throws IOException {
        return Files.copy(zip, folder.resolve(UUID.randomUUID().toString()));
    }

    private static Path changed(Path zip, String part, String text) throws IOException {
        try (FileSystem within = FileSystems.newFileSystem(zip)) {
            Files.writeString(within.getPath(part), text);
        }
        return zip;
    }

    private static DatabasePlace place(String url, Path files) {
        return new DatabasePlace(Path.of("none"), files, url, "postgres", "");
    }

    private String emptyDatabase() {
        String name = "drill_" + UUID.randomUUID().toString().replace("-", "");
        execute(url, "create database " + name);
        return url.replaceFirst("/[^/]+$", "/" + name);
    }

    private static void execute(String url, String sql) {
        try (Connection connection = DriverManager.getConnection(url, "postgres", "");
                var statement = connection.createStatement()) {
            statement.execute(sql);
        } catch (SQLException failure) {
            throw sneaked(failure);
        }
    }

    @SuppressWarnings("unchecked")
    private static <E extends Exception> RuntimeException sneaked(Exception failure) throws E {
        throw (E) failure;
    }

    /** By table: how many rows there are, and a digest of them in an order of their own. */
    private static Map<String, String> contents(String url) throws SQLException {
        Map<String, String> contents = new TreeMap<>();
        for (String table : strings(
                url,
                "select quote_ident(table_name) from information_schema.tables where table_schema = 'public'"
                        + " and table_type = 'BASE TABLE' and table_name <> 'flyway_schema_history'"))
            contents.put(
                    table,
                    strings(
                                    url,
                                    "select count(*) || ' ' || coalesce(md5(string_agg(t::text, E'\\n' order by t::text)), '') from %s t"
                                            .formatted(table))
                            .getFirst());
        return contents;
    }

    private static long count(String url, String from) throws SQLException {
        return Long.parseLong(strings(url, "select count(*) from " + from).getFirst());
    }

    private static List<String> sequences(String url) throws SQLException {
        return strings(url, "select sequencename || ' ' || coalesce(last_value, 0) from pg_sequences order by 1");
    }

    private static List<String> strings(String url, String query) throws SQLException {
        List<String> strings = new ArrayList<>();
        try (Connection connection = DriverManager.getConnection(url, "postgres", "");
                var statement = connection.createStatement();
                var rows = statement.executeQuery(query)) {
            while (rows.next()) strings.add(rows.getString(1));
        }
        return strings;
    }
}
