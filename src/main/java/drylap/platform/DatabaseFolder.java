package drylap.platform;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.stream.Stream;

/** Where the embedded PostgreSQL lives: its programs in {@code bin}, its data in {@code data}. */
record DatabaseFolder(Path path) {
    Path programs() {
        return path.resolve("bin");
    }

    Path data() {
        return path.resolve("data");
    }

    private Path mark() {
        return path.resolve("initdb.done");
    }

    /** An interrupted {@code initdb} leaves a directory that neither starts nor can be initialised again; it holds no data yet. */
    void clearHalfMade() throws IOException {
        if (Files.exists(data()) && !Files.exists(mark())) remove(data());
    }

    void markWhole() throws IOException {
        if (!Files.exists(mark())) Files.writeString(mark(), "The directory data is complete.\n");
    }

    private static void remove(Path path) throws IOException {
        if (Files.isDirectory(path, LinkOption.NOFOLLOW_LINKS)) {
            try (Stream<Path> children = Files.list(path)) {
                for (Path child : children.toList()) remove(child);
            }
        }
        Files.delete(path);
    }
}
