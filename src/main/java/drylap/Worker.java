package drylap;

import org.springframework.boot.WebApplicationType;
import org.springframework.boot.autoconfigure.ImportAutoConfiguration;
import org.springframework.boot.builder.SpringApplicationBuilder;
import org.springframework.boot.flyway.autoconfigure.FlywayAutoConfiguration;
import org.springframework.boot.jdbc.autoconfigure.DataSourceAutoConfiguration;
import org.springframework.boot.jdbc.autoconfigure.DataSourceTransactionManagerAutoConfiguration;
import org.springframework.boot.jooq.autoconfigure.JooqAutoConfiguration;
import org.springframework.boot.transaction.autoconfigure.TransactionAutoConfiguration;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.context.annotation.ComponentScan;
import org.springframework.context.annotation.FilterType;

/**
 * The application without its ways in: what works in the background, on the database of other nodes. Not a configuration by annotation, so
 * that the application's own scan of this package passes it by.
 */
@ComponentScan(
        basePackages = "drylap",
        excludeFilters =
                @ComponentScan.Filter(
                        type = FilterType.REGEX,
                        pattern = {
                            "drylap\\.(ui|api|cli|demo)\\..*",
                            "drylap\\.[A-Z].*",
                            // it prints a code that is good at the pages of the same process only
                            "drylap\\.security\\.FirstUse"
                        }))
@ImportAutoConfiguration({
    DataSourceAutoConfiguration.class,
    DataSourceTransactionManagerAutoConfiguration.class,
    TransactionAutoConfiguration.class,
    FlywayAutoConfiguration.class,
    JooqAutoConfiguration.class
})
class Worker {
    static ConfigurableApplicationContext run(String... settings) {
        return new SpringApplicationBuilder(Worker.class)
                .web(WebApplicationType.NONE)
                .properties("drylap.work.alone=true", "spring.main.keep-alive=true")
                .run(settings);
    }
}
