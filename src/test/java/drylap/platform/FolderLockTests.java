package drylap.platform;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FolderLockTests {
    @TempDir
    Path folder = Path.of("");

    @Test
    void a_second_application_on_a_folder_is_told_so_and_what_to_do() throws IOException {
        try (FolderLock _ = FolderLock.on(folder)) {
            assertThatExceptionOfType(DatabaseTrouble.class)
                    .isThrownBy(() -> FolderLock.on(folder))
                    .withMessageContaining("Another running application uses the database folder " + folder)
                    .satisfies(trouble -> assertThat(trouble.remedy()).contains("DRYLAP_DATA"));
        }
    }

    @Test
    void a_folder_is_free_again_once_its_application_has_ended() throws IOException {
        FolderLock.on(folder).close();

        FolderLock.on(folder).close();
    }
}
