package drylap.intake;

import static org.assertj.core.api.Assertions.assertThat;

import drylap.planning.JobFolder;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/** What is written reads back equal, for folders with every kind of cell, odd names and odd numbers. */
class RoundTripPropertyTests {

    @Property(tries = 100)
    void a_folder_reads_back_equal(@ForAll long seed) {
        JobFolder folder = new InventedFolder(seed).folder();
        var reading = FolderReader.read(FolderSource.inMemory("written", FolderWriter.files(folder)));
        if (reading instanceof FolderReading.Refused refused) throw new AssertionError(refused.text());
        assertThat(((FolderReading.Read) reading).folder()).isEqualTo(folder);
    }

    @Property(tries = 5)
    void a_folder_on_disk_reads_back_equal_though_another_was_there_before(@ForAll long seed) throws IOException {
        Path target = Files.createTempDirectory("drylap-round-trip");
        FolderWriter.write(new InventedFolder(seed + 1).folder(), target);
        JobFolder folder = new InventedFolder(seed).folder();
        FolderWriter.write(folder, target);
        assertThat(FolderReader.read(FolderSource.of(target)))
                .isInstanceOfSatisfying(
                        FolderReading.Read.class,
                        read -> assertThat(read.folder()).isEqualTo(folder));
        try (var files = Files.list(target)) {
            for (Path file : files.toList()) Files.delete(file);
        }
        Files.delete(target);
    }
}
