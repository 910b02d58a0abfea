package drylap.ui.components;

import static org.assertj.core.api.Assertions.assertThat;

import com.vaadin.flow.component.UI;
import com.vaadin.flow.server.Command;
import com.vaadin.flow.server.streams.UploadEvent;
import com.vaadin.flow.server.streams.UploadHandler;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.Future;
import org.junit.jupiter.api.Test;

/** A sender without our page's script, which is what asks for the size otherwise (OWASP ASVS 4.0.3, 12.1.1). */
class UploadsTests {
    private static final int MOST = 100_000;
    private final List<String> came = new ArrayList<>();

    private final UploadHandler held = Uploads.inMemory(MOST, (name, bytes) -> came.add(name + " " + bytes.length));
    private final UploadHandler filed = Uploads.inFile(MOST, (name, file) -> {
        came.add(name + " " + Files.size(file));
        Files.delete(file);
    });

    @Test
    void what_is_as_large_as_it_may_be_is_taken_whole() throws IOException {
        held.handleUploadRequest(new Sent("in-memory", MOST));
        filed.handleUploadRequest(new Sent("in-a-file", MOST));

        assertThat(came).containsExactly("in-memory 100000", "in-a-file 100000");
    }

    @Test
    void what_is_larger_is_refused_by_its_limit_and_nothing_is_done_with_it() throws IOException {
        for (UploadHandler handler : List.of(held, filed)) {
            var sent = new Sent("plan", MOST + 1);
            handler.handleUploadRequest(sent);

            assertThat(sent.isRejected()).isTrue();
            assertThat(sent.getRejectionMessage()).contains("plan", "100000 bytes");
        }
        assertThat(came).isEmpty();
    }

    @Test
    void of_what_has_no_end_little_is_read() throws IOException {
        var endless = new InputStream() {
            private long read;

            @Override
            public int read() {
                read++;
                return 0;
            }
        };
        held.handleUploadRequest(new Sent("endless", endless));

        assertThat(endless.read).isLessThan(MOST * 3L);
        assertThat(came).isEmpty();
    }

    @Test
    void of_a_file_that_was_refused_nothing_is_left_behind() throws IOException {
        var taken = new ArrayList<Path>();
        var keeping = Uploads.inFile(MOST, (_, file) -> taken.add(file));
        keeping.handleUploadRequest(new Sent("small", 1));
        Path folder = taken.getFirst().getParent();
        byte[] mark = UUID.randomUUID().toString().getBytes(StandardCharsets.UTF_8);

        keeping.handleUploadRequest(
                new Sent("large", new java.io.SequenceInputStream(new ByteArrayInputStream(mark), zeros(MOST))));

        Files.delete(taken.getFirst());
        try (var files = Files.newDirectoryStream(folder, "drylap-*.upload")) {
            for (Path file : files)
                assertThat(startsWith(file, mark)).as("%s", file).isFalse();
        }
    }

    private static boolean startsWith(Path file, byte[] mark) throws IOException {
        try (InputStream in = Files.newInputStream(file)) {
            return java.util.Arrays.equals(in.readNBytes(mark.length), mark);
        } catch (java.nio.file.NoSuchFileException another) {
            return false;
        }
    }

    private static InputStream zeros(int many) {
        return new ByteArrayInputStream(new byte[many]);
    }

    /** Vaadin's event with bytes of our own, at a page that does at once what it is told. */
    private static final class Sent extends UploadEvent {
        private final InputStream bytes;

        Sent(String name, int many) {
            this(name, zeros(many));
        }

        Sent(String name, InputStream bytes) {
            super(null, null, null, name, -1, "application/octet-stream", null, null);
            this.bytes = bytes;
        }

        @Override
        public InputStream getInputStream() {
            return bytes;
        }

        @Override
        public UI getUI() {
            return new UI() {
                @Override
                public Future<Void> access(Command command) {
                    command.execute();
                    return java.util.concurrent.CompletableFuture.completedFuture(null);
                }
            };
        }
    }
}
