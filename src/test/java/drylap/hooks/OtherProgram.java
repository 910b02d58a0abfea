package drylap.hooks;

import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.Executors;

/** A program that is told: a real server on this machine, which answers as it is bidden. */
final class OtherProgram implements AutoCloseable {
    final List<Got> got = new CopyOnWriteArrayList<>();
    volatile int status = 200;
    private final HttpServer server;

    record Got(String path, String delivery, String sentAt, String signature, String type, String body) {}

    OtherProgram() {
        try {
            server = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
        server.setExecutor(Executors.newVirtualThreadPerTaskExecutor());
        server.createContext("/", this::take);
        server.start();
    }

    int port() {
        return server.getAddress().getPort();
    }

    String url() {
        return "http://127.0.0.1:%d/told".formatted(port());
    }

    private void take(HttpExchange exchange) throws IOException {
        var head = exchange.getRequestHeaders();
        got.add(new Got(
                exchange.getRequestURI().getPath(),
                String.valueOf(head.getFirst(Sender.DELIVERY)),
                String.valueOf(head.getFirst(Sender.SENT_AT)),
                String.valueOf(head.getFirst(Sender.SIGNATURE)),
                String.valueOf(head.getFirst("Content-Type")),
                new String(exchange.getRequestBody().readAllBytes(), StandardCharsets.UTF_8)));
        if (status / 100 == 3) exchange.getResponseHeaders().set("Location", "/elsewhere");
        exchange.sendResponseHeaders(status, -1);
        exchange.close();
    }

    @Override
    public void close() {
        server.stop(0);
    }
}
