package drylap.faults;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/** The way from the nodes to PostgreSQL, which can be made slow, or cut. */
final class Wire implements AutoCloseable {
    private static final int PIECE = 16 * 1024;

    private final ServerSocket door = new ServerSocket(0, 200, InetAddress.getLoopbackAddress());
    private final Set<Socket> open = ConcurrentHashMap.newKeySet();
    private final int to;
    private volatile long delayMs;
    private volatile boolean cut;

    Wire(int to) throws IOException {
        this.to = to;
        Thread.ofPlatform().daemon().name("wire").start(this::live);
    }

    int port() {
        return door.getLocalPort();
    }

    /** Each piece of what is said, either way, arrives so much later. */
    void slow(long milliseconds) {
        delayMs = milliseconds;
    }

    /** Every connection breaks off, and none can be made. */
    void cut() {
        cut = true;
        open.forEach(Wire::end);
    }

    void mend() {
        cut = false;
        delayMs = 0;
    }

    private void live() {
        while (!door.isClosed()) {
            try {
                Socket in = door.accept();
                if (cut) end(in);
                else connect(in);
            } catch (IOException closed) {
                // the next one finds the door closed, or is another connection
            }
        }
    }

    private void connect(Socket in) {
        try {
            Socket out = new Socket(InetAddress.getLoopbackAddress(), to);
            in.setTcpNoDelay(true);
            out.setTcpNoDelay(true);
            open.add(in);
            open.add(out);
            Thread.ofVirtual().start(() -> carry(in, out));
            Thread.ofVirtual().start(() -> carry(out, in));
        } catch (IOException nobodyThere) {
            end(in);
        }
    }

    private void carry(Socket from, Socket into) {
        try {
            InputStream in = from.getInputStream();
            OutputStream out = into.getOutputStream();
            byte[] piece = new byte[PIECE];
            for (int read = in.read(piece); read >= 0; read = in.read(piece)) {
                if (delayMs > 0) Thread.sleep(delayMs);
                out.write(piece, 0, read);
            }
        } catch (IOException | InterruptedException broken) {
            // both ends learn of it below
        } finally {
            end(from);
            end(into);
        }
    }

    private static void end(Socket socket) {
        try {
            // a reset, as of a peer that is gone
            socket.setSoLinger(true, 0);
            socket.close();
        } catch (IOException closed) {
            // it is what was wanted
        }
    }

    @Override
    public void close() throws IOException {
        door.close();
        open.forEach(Wire::end);
    }
}
