package drylap.intake;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;

/** A path at which there is nothing to read. */
record NoFolder(Path path) implements FolderSource {
    @Override
    public String describe() {
        return "path " + path;
    }

    @Override
    public Set<String> files() {
        return Set.of();
    }

    @Override
    public InputStream open(String file) throws IOException {
        throw new NoSuchFileException(path.toString());
    }

    @Override
    public long size(String file) throws IOException {
        throw new NoSuchFileException(path.toString());
    }

    @Override
    public List<Problem> problems() {
        return List.of(Problem.ofFile(path.toString(), "does not exist", "a folder or a zip file"));
    }
}
