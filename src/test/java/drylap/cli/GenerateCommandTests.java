package drylap.cli;

import static org.assertj.core.api.Assertions.assertThat;

import drylap.intake.FolderReader;
import drylap.intake.FolderReading;
import drylap.intake.FolderSource;
import drylap.intake.GeneratedFolder;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class GenerateCommandTests {
    @TempDir
    Path temp;

    final StringWriter out = new StringWriter();
    final StringWriter err = new StringWriter();
    final Commands commands = new Commands((_, _) -> {}, new PrintWriter(out, true), new PrintWriter(err, true));

    @Test
    void a_folder_is_written_that_the_reader_takes() {
        Path folder = temp.resolve("new/season");
        assertThat(commands.run("generate", "--openings", "60", "--seed", "5", "--out", folder.toString()))
                .isZero();
        assertThat(out.toString()).startsWith(folder + ": 60 openings of 2 sites, ");
        assertThat(FolderReader.read(FolderSource.of(folder)))
                .isInstanceOfSatisfying(
                        FolderReading.Read.class,
                        read -> assertThat(read.folder()).isEqualTo(GeneratedFolder.of(60, 2, 5)));
    }

    @Test
    void a_size_outside_the_limits_ends_with_2_and_says_what_is_accepted() {
        assertThat(commands.run("generate", "--openings", "7", "--out", temp.toString()))
                .isEqualTo(2);
        assertThat(err.toString()).startsWith("7 openings: 8 to 20000 are accepted");
    }

    @Test
    void a_target_that_cannot_be_a_folder_ends_with_2() throws IOException {
        Path file = Files.writeString(temp.resolve("taken"), "a file");
        assertThat(commands.run("generate", "--openings", "8", "--out", file.toString()))
                .isEqualTo(2);
        assertThat(err.toString()).startsWith("--out " + file + " cannot be written to: ");
    }
}
