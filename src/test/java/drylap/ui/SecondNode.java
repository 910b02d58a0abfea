package drylap.ui;

import drylap.Drylap;
import java.util.Map;
import java.util.stream.Stream;
import org.springframework.boot.builder.SpringApplicationBuilder;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.core.env.Environment;

/** Another Drylap beside the one of a test: it knows nothing of the first but the database that both use. */
final class SecondNode implements AutoCloseable {
    private static final Map<String, String> ITS_OWN = Map.of(
            "server.port", "0",
            "drylap.demo", "",
            "drylap.demo-people", "allow",
            "vaadin.productionMode", "true",
            "spring.datasource.hikari.minimum-idle", "1",
            "spring.datasource.hikari.maximum-pool-size", "8");
    private static final String[] SHARED = {"drylap.db.url", "drylap.db.user"};

    private final ConfigurableApplicationContext context;

    SecondNode(Environment first) {
        context = new SpringApplicationBuilder(Drylap.class).run(arguments(first));
    }

    private static String[] arguments(Environment first) {
        var own = ITS_OWN.entrySet().stream().map(one -> argument(one.getKey(), one.getValue()));
        var shared = Stream.of(SHARED).map(key -> argument(key, first.getRequiredProperty(key)));
        return Stream.concat(own, shared).toArray(String[]::new);
    }

    private static String argument(String key, String value) {
        return "--%s=%s".formatted(key, value);
    }

    int port() {
        return Integer.parseInt(context.getEnvironment().getRequiredProperty("local.server.port"));
    }

    @Override
    public void close() {
        context.close();
    }
}
