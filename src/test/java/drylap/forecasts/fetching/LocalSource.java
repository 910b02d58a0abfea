package drylap.forecasts.fetching;

import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import drylap.forecasts.ForecastSettings;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.Executors;

/** A source on this machine that answers as it is told and remembers how it was asked. */
public final class LocalSource implements AutoCloseable {
    /** How an answer is written. */
    @FunctionalInterface
    public interface Script {
        void answer(HttpExchange exchange) throws IOException;
    }

    /** One question as it came. */
    public record Asked(String path, Map<String, List<String>> headers) {
        /** A header by its name, blank where it was not sent. */
        public String header(String name) {
            return headers.entrySet().stream()
                    .filter(one -> one.getKey().equalsIgnoreCase(name))
                    .map(one -> String.join(",", one.getValue()))
                    .findFirst()
                    .orElse("");
        }
    }

    private final HttpServer server;
    private final List<Asked> asked = new CopyOnWriteArrayList<>();
    private volatile Script script = exchange -> exchange.sendResponseHeaders(404, -1);

    public LocalSource() throws IOException {
        server = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
        server.setExecutor(Executors.newVirtualThreadPerTaskExecutor());
        server.createContext("/", exchange -> {
            asked.add(new Asked(exchange.getRequestURI().toString(), Map.copyOf(exchange.getRequestHeaders())));
            try (exchange) {
                script.answer(exchange);
            }
        });
        server.start();
    }

    public void answers(Script told) {
        script = told;
    }

    public void answers(int status, String body, String... headers) {
        answers(exchange -> {
            for (int i = 0; i < headers.length; i += 2)
                exchange.getResponseHeaders().add(headers[i], headers[i + 1]);
            byte[] bytes = body.getBytes(StandardCharsets.UTF_8);
            exchange.sendResponseHeaders(status, bytes.length == 0 ? -1 : bytes.length);
            if (bytes.length > 0) exchange.getResponseBody().write(bytes);
        });
    }

    public List<Asked> asked() {
        return asked;
    }

    public String base() {
        return "http://127.0.0.1:" + server.getAddress().getPort();
    }

    /** Every source is asked here. */
    public ForecastSettings settings() {
        return settings(Duration.ofSeconds(20));
    }

    ForecastSettings settings(Duration whole) {
        return new ForecastSettings(
                "Drylap tests (quay@example.org)",
                base(),
                base() + "/",
                base(),
                base() + "/files/{site}.csv",
                Duration.ofSeconds(20),
                whole);
    }

    @Override
    public void close() {
        server.stop(0);
    }
}
