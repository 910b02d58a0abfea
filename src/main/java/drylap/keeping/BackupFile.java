package drylap.keeping;

import drylap.keeping.Manifest.FilePart;
import drylap.keeping.Manifest.TablePart;
import drylap.kernel.Sha256;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.zip.ZipEntry;
import java.util.zip.ZipException;
import java.util.zip.ZipFile;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.json.JsonMapper;

/** A backup that is being read; opened only when every byte is as its manifest says. */
final class BackupFile implements AutoCloseable {
    private static final String ACCEPTED = "accepted is a file that ./drylap backup has written";

    private final ZipFile zip;
    private final Manifest manifest;

    private BackupFile(ZipFile zip, Manifest manifest) {
        this.zip = zip;
        this.manifest = manifest;
    }

    static BackupFile open(Path path) throws BackupTrouble, IOException {
        ZipFile zip;
        try {
            zip = new ZipFile(path.toFile());
        } catch (ZipException noZip) {
            throw new BackupTrouble(
                    "%s is no backup or was cut off (%s)".formatted(path, noZip.getMessage()), ACCEPTED);
        }
        try {
            var file = new BackupFile(zip, manifest(zip, path));
            file.check(path);
            return file;
        } catch (BackupTrouble | IOException | RuntimeException trouble) {
            zip.close();
            throw trouble;
        }
    }

    private static Manifest manifest(ZipFile zip, Path path) throws BackupTrouble, IOException {
        ZipEntry entry = zip.getEntry(BackupWriter.MANIFEST);
        if (entry == null) throw new BackupTrouble("%s has no %s".formatted(path, BackupWriter.MANIFEST), ACCEPTED);
        try (InputStream in = zip.getInputStream(entry)) {
            Manifest manifest = JsonMapper.shared().readValue(in, Manifest.class);
            if (manifest.format() != Manifest.FORMAT)
                throw new BackupTrouble(
                        "%s has format %d".formatted(path, manifest.format()), "accepted is " + Manifest.FORMAT);
            return manifest;
        } catch (JacksonException broken) {
            throw new BackupTrouble("%s in %s cannot be read".formatted(BackupWriter.MANIFEST, path), ACCEPTED);
        }
    }

    private void check(Path path) throws BackupTrouble, IOException {
        for (TablePart table : manifest.tables()) check(path, BackupWriter.TABLES + table.name(), table.sha256());
        for (FilePart file : manifest.files()) check(path, BackupWriter.FILES + file.path(), file.sha256());
    }

    private void check(Path path, String part, String sha256) throws BackupTrouble, IOException {
        try (InputStream in = part(part)) {
            if (!Sha256.hex(in).equals(sha256))
                throw new BackupTrouble("%s in %s is not what was backed up".formatted(part, path), ACCEPTED);
        } catch (ZipException broken) {
            throw new BackupTrouble("%s in %s is damaged (%s)".formatted(part, path, broken.getMessage()), ACCEPTED);
        }
    }

    Manifest manifest() {
        return manifest;
    }

    InputStream part(String name) throws BackupTrouble, IOException {
        ZipEntry entry = zip.getEntry(name);
        if (entry == null) throw new BackupTrouble("%s has no part %s".formatted(zip.getName(), name), ACCEPTED);
        return zip.getInputStream(entry);
    }

    @Override
    public void close() throws IOException {
        zip.close();
    }
}
