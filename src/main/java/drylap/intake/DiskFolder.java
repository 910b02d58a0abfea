package drylap.intake;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** A folder on disk; folders inside it are not looked into. */
record DiskFolder(Path folder) implements FolderSource {
    @Override
    public String describe() {
        return "folder " + folder;
    }

    @Override
    public Set<String> files() {
        try (var found = Files.list(folder)) {
            return found.filter(Files::isRegularFile)
                    .map(file -> file.getFileName().toString())
                    .collect(Collectors.toCollection(TreeSet::new));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public InputStream open(String file) throws IOException {
        return Files.newInputStream(folder.resolve(file));
    }

    @Override
    public long size(String file) throws IOException {
        return Files.size(folder.resolve(file));
    }
}
