package drylap.platform;

import java.time.Clock;
import java.time.ZoneOffset;
import javax.sql.DataSource;
import org.jspecify.annotations.Nullable;
import org.springframework.boot.context.properties.EnableConfigurationProperties;
import org.springframework.boot.jdbc.autoconfigure.JdbcConnectionDetails;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** The connection pool, Flyway and jOOQ all follow the connection details given here. */
@Configuration(proxyBeanMethods = false)
@EnableConfigurationProperties(PlatformSettings.class)
class DatabaseConfiguration {
    /** All that has to do with time goes by it, jobs included; where several machines may work, by the clock that they share. */
    @Bean
    Clock clock(Database database, DataSource dataSource) {
        return database.shared() ? SharedTime.of(dataSource).withZone(ZoneOffset.UTC) : Clock.systemUTC();
    }

    @Bean(destroyMethod = "close")
    Database database(PlatformSettings settings) {
        PlatformSettings.Db db = settings.db();
        String url = db.url();
        if (settings.work().alone() && (url == null || url.isBlank()))
            throw new DatabaseTrouble(
                    "A worker shares the database of other nodes, and DRYLAP_DB_URL names none",
                    "Set DRYLAP_DB_URL, DRYLAP_DB_USER and DRYLAP_DB_PASSWORD as on the other nodes; on a database of its own the"
                            + " application needs no worker beside it.");
        return url == null || url.isBlank()
                ? EmbeddedDatabase.in(settings.data())
                : new ExternalDatabase(url, db.user(), db.password()).reached();
    }

    @Bean
    JdbcConnectionDetails connectionDetails(Database database) {
        return new JdbcConnectionDetails() {
            @Override
            public @Nullable String getUsername() {
                return database.user();
            }

            @Override
            public @Nullable String getPassword() {
                return database.password();
            }

            @Override
            public String getJdbcUrl() {
                return database.url();
            }
        };
    }
}
