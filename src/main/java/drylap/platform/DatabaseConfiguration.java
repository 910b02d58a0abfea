package drylap.platform;

import java.time.Clock;
import org.jspecify.annotations.Nullable;
import org.springframework.boot.context.properties.EnableConfigurationProperties;
import org.springframework.boot.jdbc.autoconfigure.JdbcConnectionDetails;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** The connection pool, Flyway and jOOQ all follow the connection details given here. */
@Configuration(proxyBeanMethods = false)
@EnableConfigurationProperties(PlatformSettings.class)
class DatabaseConfiguration {
    @Bean
    Clock clock() {
        return Clock.systemUTC();
    }

    @Bean(destroyMethod = "close")
    Database database(PlatformSettings settings) {
        PlatformSettings.Db db = settings.db();
        String url = db.url();
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
