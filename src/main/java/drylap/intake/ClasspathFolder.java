package drylap.intake;

import java.io.FileNotFoundException;
import java.io.IOException;
import java.io.InputStream;
import java.net.URL;
import java.net.URLConnection;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** The program's own resources. A class path cannot be listed, so only the files of the contract are looked for. */
record ClasspathFolder(String prefix) implements FolderSource {
    @Override
    public String describe() {
        return "sample " + prefix;
    }

    @Override
    public Set<String> files() {
        return ContractFiles.ALL.stream()
                .filter(file -> find(file) != null)
                .collect(Collectors.toCollection(TreeSet::new));
    }

    @Override
    public InputStream open(String file) throws IOException {
        return connect(file).getInputStream();
    }

    @Override
    public long size(String file) throws IOException {
        try (InputStream in = open(file)) {
            return in.transferTo(java.io.OutputStream.nullOutputStream());
        }
    }

    private URLConnection connect(String file) throws IOException {
        URL found = find(file);
        if (found == null) throw new FileNotFoundException(prefix + "/" + file);
        URLConnection connection = found.openConnection();
        connection.setUseCaches(false);
        return connection;
    }

    private @Nullable URL find(String file) {
        return ClasspathFolder.class.getClassLoader().getResource(prefix + "/" + file);
    }
}
