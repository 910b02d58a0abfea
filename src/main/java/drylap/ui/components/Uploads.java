package drylap.ui.components;

import com.vaadin.flow.server.streams.UploadEvent;
import com.vaadin.flow.server.streams.UploadHandler;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.Serializable;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * Takes files from browsers. The largest size that an upload's button knows is asked for by the page's script only, which a sender may leave out: here
 * no more is read than may come, and nothing is done with what is larger.
 */
public final class Uploads {
    private static final int PIECE = 1 << 16;

    private Uploads() {}

    /** Is given a file, with the page locked. */
    public interface Came<T> extends Serializable {
        void with(String name, T content) throws IOException;
    }

    /** For files that are small enough to be held. */
    public static UploadHandler inMemory(int mostBytes, Came<byte[]> came) {
        return event -> {
            var bytes = new ByteArrayOutputStream();
            if (fits(event, bytes, mostBytes)) give(event, came, bytes.toByteArray());
        };
    }

    /** For larger ones; whoever is given the file deletes it. */
    public static UploadHandler inFile(int mostBytes, Came<Path> came) {
        return event -> {
            Path file = Files.createTempFile("drylap-", ".upload");
            boolean fits = false;
            try (var out = Files.newOutputStream(file)) {
                fits = fits(event, out, mostBytes);
            } finally {
                if (!fits) Files.deleteIfExists(file);
            }
            if (fits) give(event, came, file);
        };
    }

    private static boolean fits(UploadEvent event, OutputStream out, int mostBytes) throws IOException {
        try (InputStream in = event.getInputStream()) {
            byte[] piece = new byte[PIECE];
            long came = 0;
            for (int read = in.read(piece); read >= 0; read = in.read(piece)) {
                came += read;
                if (came > mostBytes) {
                    event.reject("%s has more than %d bytes; nothing of it was done"
                            .formatted(event.getFileName(), mostBytes));
                    return false;
                }
                out.write(piece, 0, read);
            }
            return true;
        }
    }

    private static <T> void give(UploadEvent event, Came<T> came, T content) {
        event.getUI().access(() -> {
            try {
                came.with(event.getFileName(), content);
            } catch (IOException unread) {
                throw new UncheckedIOException(unread);
            }
        });
    }
}
