package drylap.platform;

import java.sql.SQLException;
import java.time.Duration;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import javax.sql.DataSource;
import org.jspecify.annotations.Nullable;
import org.springframework.boot.context.event.ApplicationReadyEvent;
import org.springframework.context.event.ContextClosedEvent;
import org.springframework.context.event.EventListener;
import org.springframework.core.Ordered;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Service;

/** What a service manager or a balancer asks of this node. That it answers at all says that it lives. */
@Service
public final class NodeHealth {
    private static final Duration PATIENCE = Duration.ofSeconds(2);
    private static final int ANSWER_WITHIN_S = 1;

    private final DataSource database;
    private volatile Phase phase = Phase.STARTING;
    private @Nullable FutureTask<Boolean> asked;

    private enum Phase {
        STARTING,
        AT_WORK,
        STOPPING
    }

    NodeHealth(DataSource database) {
        this.database = database;
    }

    /**
     * How the node stands.
     *
     * @param ready whether it may be sent requests
     * @param words what keeps it from being ready
     */
    public record Readiness(boolean ready, String words) {}

    /** Answers within two seconds or so, whether the database does or not. */
    public Readiness readiness() {
        return switch (phase) {
            case STARTING -> new Readiness(false, "starting");
            case STOPPING -> new Readiness(false, "stopping");
            case AT_WORK ->
                databaseAnswers() ? new Readiness(true, "ready") : new Readiness(false, "the database does not answer");
        };
    }

    @Order(Ordered.LOWEST_PRECEDENCE)
    @EventListener(ApplicationReadyEvent.class)
    void started() {
        phase = Phase.AT_WORK;
    }

    @Order(Ordered.HIGHEST_PRECEDENCE)
    @EventListener(ContextClosedEvent.class)
    void stopping() {
        phase = Phase.STOPPING;
    }

    private boolean databaseAnswers() {
        try {
            return question().get(PATIENCE.toMillis(), TimeUnit.MILLISECONDS);
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
            return false;
        } catch (ExecutionException | TimeoutException silent) {
            return false;
        }
    }

    /** One at a time, however many ask: a database that hangs must not be asked by a thread for each. */
    private synchronized FutureTask<Boolean> question() {
        if (asked != null && !asked.isDone()) return asked;
        var next = new FutureTask<>(this::ask);
        asked = next;
        Thread.ofVirtual().name("health").start(next);
        return next;
    }

    private boolean ask() throws SQLException {
        try (var connection = database.getConnection()) {
            return connection.isValid(ANSWER_WITHIN_S);
        }
    }
}
