package drylap.platform;

import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.net.InetSocketAddress;
import java.nio.charset.StandardCharsets;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.boot.autoconfigure.condition.ConditionalOnProperty;
import org.springframework.boot.context.event.ApplicationReadyEvent;
import org.springframework.context.SmartLifecycle;
import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Component;

/** A worker has no page; the two addresses that a service manager asks, and its numbers, are all that it answers. */
@Component
@ConditionalOnProperty("drylap.work.alone")
final class HealthPort implements SmartLifecycle {
    private final NodeHealth health;
    private final MetricsText metrics;
    private final HttpServer server;
    private final ExecutorService threads = Executors.newVirtualThreadPerTaskExecutor();
    private volatile boolean running;

    /** @throws java.net.BindException where somebody has the port */
    HealthPort(NodeHealth health, MetricsText metrics, @Value("${server.port}") int port) throws IOException {
        this.health = health;
        this.metrics = metrics;
        server = HttpServer.create(new InetSocketAddress(port), 0);
        server.createContext("/", exchange -> answer(exchange, 404, "there is nothing here"));
        server.createContext("/health/live", exchange -> answer(exchange, 200, "alive"));
        server.createContext("/health/ready", this::ready);
        server.createContext("/metrics", this::metrics);
        server.setExecutor(threads);
    }

    @Override
    public void start() {
        running = true;
        server.start();
    }

    @EventListener(ApplicationReadyEvent.class)
    void say() {
        System.out.println("Drylap's worker is ready; http://localhost:%d/health/ready says so"
                .formatted(server.getAddress().getPort()));
    }

    @Override
    public void stop() {
        running = false;
        server.stop(0);
        threads.shutdownNow();
    }

    @Override
    public boolean isRunning() {
        return running;
    }

    private void ready(HttpExchange exchange) throws IOException {
        var readiness = health.readiness();
        answer(exchange, readiness.ready() ? 200 : 503, readiness.words());
    }

    private void metrics(HttpExchange exchange) throws IOException {
        String shown = exchange.getRequestHeaders().getFirst("Authorization");
        if (!metrics.on()) answer(exchange, 404, "there is nothing here");
        else if (!metrics.opens(shown == null ? "" : shown)) answer(exchange, 401, "show the token of the metrics");
        else answer(exchange, 200, metrics.text());
    }

    private static void answer(HttpExchange exchange, int status, String words) throws IOException {
        byte[] body = (words + "\n").getBytes(StandardCharsets.UTF_8);
        try (exchange) {
            exchange.getResponseHeaders().set("Content-Type", "text/plain; charset=utf-8");
            exchange.getResponseHeaders().set("Cache-Control", "no-store");
            exchange.sendResponseHeaders(status, body.length);
            exchange.getResponseBody().write(body);
        }
    }
}
