package drylap;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.yaml.snakeyaml.Yaml;

/** What is written for service managers, against what the application and its README say; nothing of it is run here. */
class DeployFilesTests {
    private static final Path FOLDER = Path.of("src/deploy");
    private static final Pattern VARIABLE = Pattern.compile("DRYLAP_[A-Z_]+");

    final Map<String, Map<String, Object>> services = services();

    @Test
    void the_compose_file_has_a_database_two_nodes_that_answer_and_two_that_work() {
        assertThat(services.keySet())
                .containsExactlyInAnyOrder("database", "web1", "web2", "worker1", "worker2", "balancer");
        for (String web : List.of("web1", "web2")) {
            assertThat(environment(web)).containsEntry("DRYLAP_WORK_THREADS", "0");
            assertThat(services.get(web)).doesNotContainKey("command");
        }
        for (String worker : List.of("worker1", "worker2")) {
            assertThat(environment(worker).get("DRYLAP_WORK_THREADS")).isNotEqualTo("0");
            assertThat(services.get(worker)).containsEntry("command", List.of("worker"));
        }
    }

    @Test
    void every_node_is_given_the_same_database_the_same_photos_and_time_to_stop() {
        for (String node : List.of("web1", "web2", "worker1", "worker2")) {
            assertThat(environment(node))
                    .containsEntry("DRYLAP_DB_URL", "jdbc:postgresql://database:5432/drylap")
                    .containsEntry("DRYLAP_FILES", "/var/lib/drylap/photos");
            assertThat(services.get(node))
                    .containsEntry("stop_grace_period", "60s")
                    .extractingByKey("healthcheck")
                    .asString()
                    .contains("/health/live");
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"drylap-web@.service", "drylap-worker@.service"})
    void a_unit_starts_the_node_of_its_name_again_whenever_it_ends(String unit) throws IOException {
        List<String> lines = Files.readAllLines(FOLDER.resolve(unit));
        assertThat(lines).contains("Restart=always", "TimeoutStopSec=60", "SuccessExitStatus=143");
        String start = lines.stream()
                .filter(line -> line.startsWith("ExecStart="))
                .findFirst()
                .orElseThrow();
        assertThat(start.endsWith("drylap.jar worker")).isEqualTo(unit.contains("worker"));
        assertThat(lines.stream().anyMatch(line -> line.contains("DRYLAP_WORK_THREADS=0")))
                .isEqualTo(unit.contains("web"));
    }

    @Test
    void the_readme_tells_every_variable_that_is_set() throws IOException {
        String readme = Files.readString(Path.of("README.md"));
        var set = new TreeSet<String>();
        try (Stream<Path> files = Files.list(FOLDER)) {
            for (Path file : files.toList())
                VARIABLE.matcher(Files.readString(file)).results().forEach(found -> set.add(found.group()));
        }
        assertThat(set).contains("DRYLAP_DB_URL", "DRYLAP_WORK_THREADS").allMatch(readme::contains);
    }

    @Test
    void the_balancer_asks_who_is_ready_and_keeps_people_where_they_signed_in() throws IOException {
        assertThat(Files.readString(FOLDER.resolve("haproxy.cfg")))
                .contains("uri /health/ready", "cookie NODE insert", "server web1 web1:8080 cookie web1");
    }

    @SuppressWarnings("unchecked")
    private Map<String, Object> environment(String service) {
        return (Map<String, Object>) services.getOrDefault(service, Map.of()).get("environment");
    }

    private static Map<String, Map<String, Object>> services() {
        try {
            Map<String, Map<String, Map<String, Object>>> file =
                    new Yaml().load(Files.readString(FOLDER.resolve("compose.yaml")));
            return file.get("services");
        } catch (IOException failure) {
            throw new java.io.UncheckedIOException(failure);
        }
    }
}
