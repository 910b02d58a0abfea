package drylap.platform;

import java.sql.DriverManager;
import java.sql.SQLException;
import java.util.Properties;
import org.jspecify.annotations.Nullable;

/** A PostgreSQL that someone else runs; several applications may share it. */
record ExternalDatabase(
        String url, @Nullable String user, @Nullable String password) implements Database {
    private static final String PREFIX = "jdbc:postgresql:";
    private static final String CONNECT_WAIT_S = "10";

    ExternalDatabase {
        if (!url.startsWith(PREFIX))
            throw new DatabaseTrouble(
                    "DRYLAP_DB_URL is no PostgreSQL address for Java: it does not begin with " + PREFIX,
                    "Write it as %s//HOST:PORT/DATABASE, with user and password in DRYLAP_DB_USER and DRYLAP_DB_PASSWORD."
                            .formatted(PREFIX));
    }

    /** @throws DatabaseTrouble where no connection can be had; better said at once than after the pool's long wait */
    ExternalDatabase reached() {
        Properties properties = new Properties();
        properties.setProperty("connectTimeout", CONNECT_WAIT_S);
        if (user != null) properties.setProperty("user", user);
        if (password != null) properties.setProperty("password", password);
        try (var _ = DriverManager.getConnection(url, properties)) {
            return this;
        } catch (SQLException failure) {
            throw new DatabaseTrouble(
                    "The database that DRYLAP_DB_URL names cannot be reached: " + failure.getMessage(),
                    "See that it runs and that DRYLAP_DB_URL, DRYLAP_DB_USER and DRYLAP_DB_PASSWORD are right; without"
                            + " DRYLAP_DB_URL the application runs a database of its own.",
                    failure);
        }
    }

    @Override
    public boolean shared() {
        return true;
    }

    @Override
    public void close() {}
}
