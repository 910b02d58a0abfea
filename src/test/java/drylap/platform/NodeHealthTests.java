package drylap.platform;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import org.junit.jupiter.api.Test;
import org.postgresql.ds.PGSimpleDataSource;

class NodeHealthTests {
    static PGSimpleDataSource at(String url) {
        var database = new PGSimpleDataSource();
        database.setUrl(url);
        database.setUser("postgres");
        return database;
    }

    @Test
    void a_node_is_ready_between_its_start_and_its_stop_while_the_database_answers() {
        var health = new NodeHealth(at(TestDatabase.empty()));
        assertThat(health.readiness()).isEqualTo(new NodeHealth.Readiness(false, "starting"));
        health.started();
        assertThat(health.readiness()).isEqualTo(new NodeHealth.Readiness(true, "ready"));
        health.stopping();
        assertThat(health.readiness()).isEqualTo(new NodeHealth.Readiness(false, "stopping"));
    }

    @Test
    void a_database_that_takes_the_call_and_says_nothing_does_not_hang_whoever_asks() throws IOException {
        try (var mute = new ServerSocket(0, 10, InetAddress.getLoopbackAddress())) {
            var health = new NodeHealth(at("jdbc:postgresql://127.0.0.1:%d/postgres".formatted(mute.getLocalPort())));
            health.started();
            assertThat(health.readiness())
                    .isEqualTo(new NodeHealth.Readiness(false, "the database does not answer"))
                    .isEqualTo(health.readiness());
        }
    }
}
