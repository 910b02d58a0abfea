package drylap.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ZipFolderTests {
    final SmallFolder small = new SmallFolder();

    @TempDir
    Path temp;

    @Test
    void files_at_the_top_are_read() throws IOException {
        assertThat(FolderReader.read(FolderSource.of(zip("", small.files())))).isEqualTo(small.read());
    }

    @Test
    void files_in_one_common_folder_are_read() throws IOException {
        assertThat(FolderReader.read(FolderSource.of(zip("week/", small.files()))))
                .isEqualTo(small.read());
    }

    @Test
    void hidden_files_that_an_operating_system_adds_are_passed_over() throws IOException {
        small.bytes("__EXTRA/._sites.csv", new byte[] {1}).bytes(".store", new byte[] {2});
        Path zip = zip("", small.files());
        small.without("__EXTRA/._sites.csv").without(".store");
        assertThat(FolderReader.read(FolderSource.of(zip))).isEqualTo(small.read());
    }

    @ParameterizedTest
    @ValueSource(strings = {"../sites.csv", "a/../../sites.csv", "/etc/sites.csv", "C:sites.csv", "..\\sites.csv"})
    void a_path_that_leads_out_is_refused(String path) throws IOException {
        small.bytes(path, small.bytes("sites.csv"));
        assertThat(refusal(zip("", small.files())))
                .isEqualTo("jobs.zip: holds a path that leads out of it (%s) – ".formatted(path)
                        + "a file name without .., drive or leading / is accepted");
    }

    @Test
    void files_in_several_folders_are_refused() throws IOException {
        assertThat(refusal(zip("", Map.of("deep/er/sites.csv", new byte[0]))))
                .isEqualTo("jobs.zip: holds files in more than one folder (deep/er/sites.csv) – "
                        + "files at the top or all in one folder is accepted");
    }

    @Test
    void what_is_no_zip_file_is_refused() throws IOException {
        Path file = Files.writeString(temp.resolve("jobs.zip"), "hello");
        assertThat(refusal(file)).isEqualTo("jobs.zip: is not a zip file that can be read – a zip file is accepted");
    }

    @Test
    void a_zip_file_that_is_not_there_is_refused() {
        assertThat(refusal(temp.resolve("jobs.zip")))
                .isEqualTo("jobs.zip: cannot be read – a zip file that this program may read is accepted");
    }

    @Test
    void too_many_entries_are_refused() throws IOException {
        Path zip = zip("", small.files());
        assertThat(refusal(zip, new Limits(1 << 20, 1 << 20, 9)))
                .isEqualTo("jobs.zip: holds too many entries (10) – at most 9 entries is accepted");
    }

    @Test
    void too_much_when_unpacked_is_refused() throws IOException {
        Path zip = zip("", Map.of("a.csv", new byte[700_000], "b.csv", new byte[700_000]));
        assertThat(refusal(zip, new Limits(1 << 20, 1 << 20, 9)))
                .isEqualTo("jobs.zip: is too large when unpacked (1400000 bytes) – at most 1 MiB is accepted");
    }

    @Test
    void one_file_that_unpacks_to_too_much_is_refused_before_it_is_unpacked() throws IOException {
        Path zip = temp.resolve("jobs.zip");
        try (ZipOutputStream out = new ZipOutputStream(Files.newOutputStream(zip))) {
            for (var file : small.without("labour.csv").files().entrySet()) entry(out, file.getKey(), file.getValue());
            out.putNextEntry(new ZipEntry("labour.csv"));
            byte[] zeros = new byte[1 << 20];
            for (int i = 0; i < 200; i++) out.write(zeros);
        }
        assertThat(Files.size(zip)).isLessThan(1 << 20);
        assertThat(refusal(zip)).isEqualTo("labour.csv: is too large (200 MiB) – a file of at most 64 MiB is accepted");
    }

    private String refusal(Path zip) {
        return ((FolderReading.Refused) FolderReader.read(FolderSource.of(zip))).text();
    }

    private String refusal(Path zip, Limits limits) {
        return ((FolderReading.Refused) FolderReader.read(new ZipFolder(zip, limits), limits)).text();
    }

    private Path zip(String prefix, Map<String, byte[]> files) throws IOException {
        Path zip = temp.resolve("jobs.zip");
        try (OutputStream file = Files.newOutputStream(zip);
                ZipOutputStream out = new ZipOutputStream(file)) {
            for (var each : files.entrySet()) entry(out, prefix + each.getKey(), each.getValue());
        }
        return zip;
    }

    private static void entry(ZipOutputStream out, String name, byte[] bytes) throws IOException {
        out.putNextEntry(new ZipEntry(name));
        out.write(bytes);
    }
}
