package drylap.platform;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.util.concurrent.atomic.AtomicInteger;
import org.flywaydb.core.Flyway;
import org.springframework.util.FileSystemUtils;

/** One embedded PostgreSQL for all database tests of this process; each context gets a migrated database of its own in it. */
public final class TestDatabase {
    private static final AtomicInteger COUNT = new AtomicInteger();
    private static final EmbeddedDatabase SERVER = start();

    private TestDatabase() {}

    /** The address of a new database with every table and no row. */
    public static String fresh() {
        return copyOf("drylap_template");
    }

    /** The address of a new database without any table. */
    public static String empty() {
        return copyOf("template1");
    }

    private static synchronized String copyOf(String template) {
        String name = "fresh" + COUNT.incrementAndGet();
        try (Connection connection = DriverManager.getConnection(SERVER.url(), "postgres", "");
                var statement = connection.createStatement()) {
            statement.execute("create database %s template %s".formatted(name, template));
            return urlOf(name);
        } catch (SQLException failure) {
            throw new IllegalStateException(failure);
        }
    }

    private static EmbeddedDatabase start() {
        try {
            Path home = Files.createTempDirectory("drylap-db-tests");
            EmbeddedDatabase server = EmbeddedDatabase.in(home);
            Runtime.getRuntime().addShutdownHook(new Thread(() -> stop(server, home)));
            makeTemplate(server);
            return server;
        } catch (IOException | SQLException failure) {
            throw new IllegalStateException(failure);
        }
    }

    private static void makeTemplate(EmbeddedDatabase server) throws SQLException {
        try (Connection connection = DriverManager.getConnection(server.url(), "postgres", "");
                var statement = connection.createStatement()) {
            statement.execute("create database drylap_template");
        }
        Flyway.configure()
                .dataSource(server.url().replace("/postgres", "/drylap_template"), "postgres", "")
                .load()
                .migrate();
    }

    private static void stop(EmbeddedDatabase server, Path home) {
        try {
            server.close();
            FileSystemUtils.deleteRecursively(home);
        } catch (IOException failure) {
            System.err.println("The test database was not cleared away: " + failure);
        }
    }

    private static String urlOf(String name) {
        return SERVER.url().replace("/postgres", "/" + name);
    }
}
