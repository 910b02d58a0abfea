package drylap.platform;

import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.time.Duration;
import org.postgresql.PGConnection;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.context.SmartLifecycle;
import org.springframework.stereotype.Component;

/** Listens on a connection of its own for as long as the node lives; after a lost connection it says that news may be missing. */
@Component
final class NewsEar implements SmartLifecycle {
    private static final Logger LOG = LoggerFactory.getLogger(NewsEar.class);
    private static final int WAIT_MS = 500;
    private static final Duration BEFORE_NEXT_TRY = Duration.ofSeconds(1);

    private final Database database;
    private final News news;
    private volatile boolean running;

    NewsEar(Database database, News news) {
        this.database = database;
        this.news = news;
    }

    @Override
    public void start() {
        running = true;
        Thread.ofPlatform().name("news").daemon().start(this::live);
    }

    @Override
    public void stop() {
        running = false;
    }

    @Override
    public boolean isRunning() {
        return running;
    }

    private void live() {
        boolean silent = false;
        for (boolean first = true; running; first = false) {
            try (Connection connection =
                    DriverManager.getConnection(database.url(), database.user(), database.password())) {
                silent = false;
                listen(connection, first);
            } catch (SQLException lost) {
                // said once, however long it lasts
                if (running && !silent) LOG.warn("No news from other nodes for the moment: {}", lost.getMessage());
                silent = true;
                pause();
            }
        }
    }

    private void listen(Connection connection, boolean first) throws SQLException {
        try (var statement = connection.createStatement()) {
            statement.execute("listen " + News.CHANNEL);
        }
        if (!first) news.missed();
        var ear = connection.unwrap(PGConnection.class);
        while (running) {
            var heard = ear.getNotifications(WAIT_MS);
            if (heard == null) continue;
            for (var one : heard) news.heard(one.getParameter());
        }
    }

    private static void pause() {
        try {
            Thread.sleep(BEFORE_NEXT_TRY);
        } catch (InterruptedException ended) {
            Thread.currentThread().interrupt();
        }
    }
}
