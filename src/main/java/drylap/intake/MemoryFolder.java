package drylap.intake;

import java.io.ByteArrayInputStream;
import java.io.FileNotFoundException;
import java.io.IOException;
import java.io.InputStream;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/** Files held in memory, such as small uploads. */
record MemoryFolder(String name, Map<String, byte[]> contents) implements FolderSource {
    MemoryFolder {
        contents = Map.copyOf(contents);
    }

    @Override
    public String describe() {
        return name;
    }

    @Override
    public Set<String> files() {
        return new TreeSet<>(contents.keySet());
    }

    @Override
    public InputStream open(String file) throws IOException {
        return new ByteArrayInputStream(bytes(file));
    }

    @Override
    public long size(String file) throws IOException {
        return bytes(file).length;
    }

    private byte[] bytes(String file) throws IOException {
        byte[] bytes = contents.get(file);
        if (bytes == null) throw new FileNotFoundException(file);
        return bytes;
    }
}
