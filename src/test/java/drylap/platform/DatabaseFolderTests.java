package drylap.platform;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DatabaseFolderTests {
    @TempDir
    Path path = Path.of("");

    @Test
    void what_an_interrupted_initdb_left_is_cleared_away() throws IOException {
        Files.createDirectories(path.resolve("data/base/1"));
        Files.writeString(path.resolve("data/base/1/file"), "half");

        new DatabaseFolder(path).clearHalfMade();

        assertThat(path.resolve("data")).doesNotExist();
    }

    @Test
    void a_directory_that_was_finished_is_never_cleared() throws IOException {
        DatabaseFolder folder = new DatabaseFolder(path);
        Files.createDirectories(folder.data());
        Files.writeString(folder.data().resolve("PG_VERSION"), "18");
        folder.markWhole();

        folder.clearHalfMade();

        assertThat(folder.data().resolve("PG_VERSION")).exists();
    }
}
