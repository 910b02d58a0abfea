package drylap;

import drylap.platform.TestDatabase;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.springframework.boot.autoconfigure.ImportAutoConfiguration;
import org.springframework.boot.flyway.autoconfigure.FlywayAutoConfiguration;
import org.springframework.boot.jdbc.autoconfigure.DataSourceAutoConfiguration;
import org.springframework.boot.jdbc.autoconfigure.DataSourceTransactionManagerAutoConfiguration;
import org.springframework.boot.jooq.autoconfigure.JooqAutoConfiguration;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.util.TestPropertyValues;
import org.springframework.boot.transaction.autoconfigure.TransactionAutoConfiguration;
import org.springframework.context.ApplicationContextInitializer;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.context.annotation.ComponentScan;
import org.springframework.test.context.ContextConfiguration;

/**
 * A test on real PostgreSQL with everything but the page. Tests of one context share a database and commit to it, so that
 * other threads and the job queue see what they do: each works on job folders of its own.
 */
@Target(ElementType.TYPE)
@Retention(RetentionPolicy.RUNTIME)
@SpringBootTest(
        classes = DbTest.Application.class,
        webEnvironment = SpringBootTest.WebEnvironment.NONE,
        properties = {"drylap.work.heartbeat-seconds=1", "drylap.work.regular=false"})
@ContextConfiguration(initializers = DbTest.FreshDatabase.class)
public @interface DbTest {
    /** Not a configuration by annotation, so that the application's own scan of this package passes it by. */
    @ComponentScan({
        "drylap.platform",
        "drylap.security",
        "drylap.sites",
        "drylap.crews",
        "drylap.weather",
        "drylap.climate",
        "drylap.forecasts",
        "drylap.progress",
        "drylap.roughopening",
        "drylap.handoff",
        "drylap.planning",
        "drylap.pace",
        "drylap.calendars",
        "drylap.tokens",
        "drylap.resends",
        "drylap.hooks",
        "drylap.moving",
        "drylap.risk",
        "drylap.whatif"
    })
    @ImportAutoConfiguration({
        DataSourceAutoConfiguration.class,
        DataSourceTransactionManagerAutoConfiguration.class,
        TransactionAutoConfiguration.class,
        FlywayAutoConfiguration.class,
        JooqAutoConfiguration.class
    })
    class Application {}

    class FreshDatabase implements ApplicationContextInitializer<ConfigurableApplicationContext> {
        @Override
        public void initialize(ConfigurableApplicationContext context) {
            TestPropertyValues.of(
                            "drylap.db.url=" + TestDatabase.fresh(),
                            "drylap.db.user=postgres",
                            // many contexts share one server
                            "spring.datasource.hikari.minimum-idle=1",
                            "spring.datasource.hikari.maximum-pool-size=8")
                    .applyTo(context);
        }
    }
}
