package drylap.ui;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;

/**
 * The parts of a workbook packed as office programs pack them. Those that Drylap writes have 64-bit sizes behind each part, which
 * the JDK's stream of a zip, and with it the reader of window schedules, takes for a broken file.
 */
final class PackedAnew {
    private PackedAnew() {}

    static byte[] of(byte[] workbook) {
        var bytes = new ByteArrayOutputStream();
        try {
            Path file = Files.createTempFile("workbook", ".xlsx");
            try (var to = new ZipOutputStream(bytes)) {
                copy(Files.write(file, workbook), to);
            } finally {
                Files.delete(file);
            }
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
        return bytes.toByteArray();
    }

    private static void copy(Path file, ZipOutputStream to) throws IOException {
        try (var from = new ZipFile(file.toFile())) {
            for (var parts = from.entries().asIterator(); parts.hasNext(); ) {
                ZipEntry part = parts.next();
                to.putNextEntry(new ZipEntry(part.getName()));
                from.getInputStream(part).transferTo(to);
            }
        }
    }
}
