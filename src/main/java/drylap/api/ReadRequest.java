package drylap.api;

import jakarta.servlet.ReadListener;
import jakarta.servlet.ServletInputStream;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletRequestWrapper;
import jakarta.servlet.http.HttpServletResponse;
import java.io.BufferedReader;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import org.springframework.http.HttpStatus;

/** A request whose body was read already, and is given again to whoever reads it next. */
public final class ReadRequest extends HttpServletRequestWrapper {
    private final byte[] body;

    /** The whole body; nothing where it is larger, which is answered then. */
    public static Optional<byte[]> bodyUpTo(int mostBytes, HttpServletRequest request, HttpServletResponse response)
            throws IOException {
        byte[] body = request.getInputStream().readNBytes(mostBytes + 1);
        if (body.length <= mostBytes) return Optional.of(body);
        ProblemAnswer.write(
                response,
                HttpStatus.CONTENT_TOO_LARGE,
                "the body has more than %d MiB; nothing of it was done".formatted(mostBytes >> 20));
        return Optional.empty();
    }

    public ReadRequest(HttpServletRequest request, byte[] body) {
        super(request);
        this.body = body;
    }

    @Override
    public ServletInputStream getInputStream() {
        return new Bytes(new ByteArrayInputStream(body));
    }

    @Override
    public BufferedReader getReader() {
        return new BufferedReader(new InputStreamReader(getInputStream(), StandardCharsets.UTF_8));
    }

    private static final class Bytes extends ServletInputStream {
        private final ByteArrayInputStream bytes;

        Bytes(ByteArrayInputStream bytes) {
            this.bytes = bytes;
        }

        @Override
        public int read() {
            return bytes.read();
        }

        @Override
        public int read(byte[] into, int from, int most) {
            return bytes.read(into, from, most);
        }

        @Override
        public boolean isFinished() {
            return bytes.available() == 0;
        }

        @Override
        public boolean isReady() {
            return true;
        }

        @Override
        public void setReadListener(ReadListener listener) {
            throw new UnsupportedOperationException("all of it is here already");
        }
    }
}
