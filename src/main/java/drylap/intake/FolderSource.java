package drylap.intake;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Where the files of a job folder or plan folder are: a folder on disk, a zip file, the program's own resources. */
public interface FolderSource {
    /** In a person's words, for messages. */
    String describe();

    /** Names without a path. */
    Set<String> files();

    /** @throws IOException where the file cannot be read; the reader turns that into a problem */
    InputStream open(String file) throws IOException;

    /** Bytes of the file, unpacked, before it is opened. */
    long size(String file) throws IOException;

    /** Why the source as a whole cannot be read; nothing else of it is used then. */
    default List<Problem> problems() {
        return List.of();
    }

    /** A folder, a zip file by its ending, or else a single file. */
    static FolderSource of(Path path) {
        if (Files.isDirectory(path)) return new DiskFolder(path);
        if (path.toString().toLowerCase(java.util.Locale.ROOT).endsWith(".zip")) return zip(path);
        return Files.isRegularFile(path) ? new SingleFile(path) : new NoFolder(path);
    }

    static FolderSource zip(Path file) {
        return new ZipFolder(file, Limits.STANDARD);
    }

    /** @param name as whoever sent it calls it, for messages */
    static FolderSource zip(Path file, String name) {
        return new ZipFolder(file, name, Limits.STANDARD);
    }

    /** The program's own resources below {@code prefix}, such as {@code sample-data/harbour-week}. */
    static FolderSource classpath(String prefix) {
        return new ClasspathFolder(prefix);
    }

    static FolderSource inMemory(String name, Map<String, byte[]> files) {
        return new MemoryFolder(name, files);
    }
}
