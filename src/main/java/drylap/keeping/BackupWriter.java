package drylap.keeping;

import drylap.keeping.Manifest.FilePart;
import drylap.keeping.Manifest.TablePart;
import drylap.kernel.Sha256;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.security.DigestOutputStream;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import tools.jackson.databind.json.JsonMapper;

/**
 * Writes a backup: the rows of one moment, then the stored files. A file is never changed and outlives the row that names it by a
 * day, so that none that a row of that moment names is missing.
 */
final class BackupWriter {
    static final String MANIFEST = "manifest.json";
    static final String TABLES = "tables/";
    static final String FILES = "files/";

    private final Clock clock;

    BackupWriter(Clock clock) {
        this.clock = clock;
    }

    /** @param connection on which all that is read is of one moment */
    Manifest write(Connection connection, Path files, OutputStream out) throws SQLException, IOException {
        try (var zip = new ZipOutputStream(out)) {
            Catalog catalog = new Catalog(connection);
            Manifest manifest = new Manifest(
                    Manifest.FORMAT,
                    clock.instant(),
                    catalog.schema(),
                    tables(catalog.tables(), new TableText(connection), zip),
                    catalog.sequences(),
                    files(files, zip));
            zip.putNextEntry(new ZipEntry(MANIFEST));
            zip.write(JsonMapper.shared().writerWithDefaultPrettyPrinter().writeValueAsBytes(manifest));
            zip.closeEntry();
            return manifest;
        } finally {
            connection.rollback();
        }
    }

    private static List<TablePart> tables(Map<String, List<String>> tables, TableText text, ZipOutputStream zip)
            throws SQLException, IOException {
        List<TablePart> parts = new ArrayList<>();
        for (var table : tables.entrySet()) {
            zip.putNextEntry(new ZipEntry(TABLES + table.getKey()));
            var copied = text.copyOut(table.getKey(), table.getValue(), zip);
            zip.closeEntry();
            parts.add(new TablePart(table.getKey(), table.getValue(), copied.rows(), copied.sha256()));
        }
        return parts;
    }

    private static List<FilePart> files(Path folder, ZipOutputStream zip) throws IOException {
        List<FilePart> parts = new ArrayList<>();
        if (!Files.isDirectory(folder)) return parts;
        try (Stream<Path> paths = Files.walk(folder)) {
            for (Path path : paths.sorted().toList()) {
                if (!Files.isRegularFile(path) || path.startsWith(folder.resolve("half-written"))) continue;
                file(path, folder.relativize(path).toString().replace('\\', '/'), zip, parts);
            }
        }
        return parts;
    }

    private static void file(Path path, String name, ZipOutputStream zip, List<FilePart> parts) throws IOException {
        var digest = Sha256.begun();
        zip.putNextEntry(new ZipEntry(FILES + name));
        try {
            long bytes = Files.copy(path, new DigestOutputStream(zip, digest));
            parts.add(new FilePart(name, bytes, Sha256.hex(digest)));
        } catch (NoSuchFileException thrownAwayMeanwhile) {
            // no row of this moment named it
        }
        zip.closeEntry();
    }
}
