package drylap.intake;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;

/** One file given in place of a folder. */
record SingleFile(Path file) implements FolderSource {
    @Override
    public String describe() {
        return "file " + file;
    }

    @Override
    public Set<String> files() {
        return Set.of(file.getFileName().toString());
    }

    @Override
    public InputStream open(String name) throws IOException {
        return Files.newInputStream(file);
    }

    @Override
    public long size(String name) throws IOException {
        return Files.size(file);
    }
}
