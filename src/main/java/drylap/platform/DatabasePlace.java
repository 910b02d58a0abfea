package drylap.platform;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Where the data is, for whoever works on it beside the application or without it.
 *
 * @param data folder of the embedded database
 * @param files folder of stored files
 * @param url of a database that others run; null for the embedded one
 */
public record DatabasePlace(
        Path data,
        Path files,
        @Nullable String url,
        @Nullable String user,
        @Nullable String password) {
    private static final int LINE_OF_PORT = 3;

    /** As the application reads it: DRYLAP_DATA, DRYLAP_FILES, DRYLAP_DB_URL, DRYLAP_DB_USER, DRYLAP_DB_PASSWORD. */
    public static DatabasePlace of(Map<String, String> environment) {
        Path data = Path.of(environment.getOrDefault("DRYLAP_DATA", "data"));
        String files = environment.getOrDefault("DRYLAP_FILES", "");
        String url = environment.get("DRYLAP_DB_URL");
        return new DatabasePlace(
                data,
                files.isBlank() ? data.resolve("files") : Path.of(files),
                url == null || url.isBlank() ? null : url,
                environment.get("DRYLAP_DB_USER"),
                environment.get("DRYLAP_DB_PASSWORD"));
    }

    /** Whether there is an embedded database in the folder, or one that others run. */
    public boolean exists() {
        return url != null || Files.exists(new DatabaseFolder(data).data().resolve("PG_VERSION"));
    }

    /**
     * Connects to the database; the embedded one is started for so long unless the application runs it already.
     *
     * @throws DatabaseTrouble where it cannot be had
     */
    public Reached reach() {
        Database database = url != null
                ? new ExternalDatabase(url, user, password).reached()
                : running().<Database>map(port -> new RunningDatabase(port)).orElseGet(() -> EmbeddedDatabase.in(data));
        try {
            return new Reached(
                    DriverManager.getConnection(database.url(), database.user(), database.password()), database);
        } catch (SQLException failure) {
            close(database);
            throw new DatabaseTrouble(
                    "The database cannot be reached: " + failure.getMessage(),
                    "See that DRYLAP_DATA or DRYLAP_DB_URL names the one that the application uses.",
                    failure);
        }
    }

    /** The port of the embedded database, where the application or one that died left it running. */
    private Optional<Integer> running() {
        Path directory = new DatabaseFolder(data.toAbsolutePath().normalize()).data();
        try {
            if (!OrphanedPostgres.isRunningOn(directory)) return Optional.empty();
            List<String> lines = Files.readAllLines(OrphanedPostgres.pidFile(directory));
            return lines.size() > LINE_OF_PORT
                    ? Optional.of(Integer.valueOf(lines.get(LINE_OF_PORT).strip()))
                    : Optional.empty();
        } catch (IOException | NumberFormatException goneMeanwhile) {
            return Optional.empty();
        }
    }

    private static void close(Database database) {
        try {
            database.close();
        } catch (IOException failure) {
            throw new IllegalStateException(failure);
        }
    }

    /** An open connection; closing it stops what was started for it. */
    public record Reached(Connection connection, AutoCloseable database) implements AutoCloseable {
        /** The connection, on which all that is read is of one moment while others go on, until it is rolled back or closed. */
        public Connection atOneMoment() throws SQLException {
            connection.setAutoCommit(false);
            connection.setReadOnly(true);
            connection.setTransactionIsolation(Connection.TRANSACTION_REPEATABLE_READ);
            return connection;
        }

        @Override
        public void close() throws SQLException {
            try {
                connection.close();
                database.close();
            } catch (SQLException failure) {
                throw failure;
            } catch (Exception failure) {
                throw new IllegalStateException(failure);
            }
        }
    }
}
