package drylap;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import drylap.intake.GeneratedFolder;
import drylap.kernel.FolderId;
import drylap.planning.JobFolders;
import drylap.planning.PlanRequest;
import drylap.planning.PlanRuns;
import drylap.planning.RunState;
import drylap.platform.TestDatabase;
import java.io.IOException;
import java.net.ServerSocket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.time.Duration;
import org.awaitility.Awaitility;
import org.jooq.DSLContext;
import org.junit.jupiter.api.Test;
import org.springframework.context.ConfigurableApplicationContext;

/** Nodes without a page on one database, as they are started and stopped. */
class WorkerTests {
    private static final Duration PATIENCE = Duration.ofSeconds(180);

    final String database = TestDatabase.fresh();

    ConfigurableApplicationContext worker(int port) {
        return Worker.run(
                "--drylap.db.url=" + database,
                "--drylap.db.user=postgres",
                "--server.port=" + port,
                "--drylap.work.regular=false",
                "--spring.datasource.hikari.minimum-idle=1",
                "--spring.datasource.hikari.maximum-pool-size=6");
    }

    @Test
    void a_worker_that_is_asked_to_stop_hands_its_run_to_another_which_goes_on_from_where_it_stood() throws Exception {
        FolderId folder;
        int port = freePort();
        try (var first = worker(port)) {
            assertThat(get(port, "/health/live")).isEqualTo(200);
            assertThat(get(port, "/health/ready")).isEqualTo(200);
            assertThat(get(port, "/sign-in")).isEqualTo(404);
            folder = first.getBean(JobFolders.class).save("week", GeneratedFolder.of(40, 2, 1));
            first.getBean(PlanRuns.class).request(folder, PlanRequest.seconds(1_800));
            awaitTrue(first, "select count(*) = 1 from run_waypoint where moves > 0");
        }
        try (var second = worker(freePort())) {
            long stood = number(second, "select soft from run_waypoint");
            long searched = number(second, "select elapsed_ms from run_waypoint");
            awaitTrue(second, "select state = 'running' and attempt = 2 from job");
            awaitTrue(second, "select elapsed_ms > %d from run_waypoint".formatted(searched));
            assertThat(number(second, "select soft from run_waypoint")).isLessThanOrEqualTo(stood);
            assertThat(number(second, "select count(*) from plan"))
                    .as("the first legal plan")
                    .isEqualTo(1);

            var runs = second.getBean(PlanRuns.class);
            runs.stop(folder);
            RunState end = Awaitility.await()
                    .atMost(PATIENCE)
                    .until(
                            () -> runs.state(folder).orElseThrow(),
                            state -> state.status().ended());
            assertThat(end.status()).isEqualTo(RunState.Status.STOPPED);
            assertThat(end.progress().soft()).isLessThanOrEqualTo(stood);
            assertThat(end.progress().elapsed().toMillis()).isGreaterThan(searched);
            assertThat(number(second, "select count(*) from run_waypoint")).isZero();
        }
    }

    @Test
    void a_worker_without_a_database_to_share_says_what_to_name() {
        assertThatThrownBy(() -> Worker.run("--drylap.db.url=", "--server.port=0"))
                .rootCause()
                .hasMessageContaining("DRYLAP_DB_URL names none");
    }

    @Test
    void a_number_of_threads_that_cannot_be_is_refused_with_what_can() {
        assertThatThrownBy(
                        () -> Worker.run("--drylap.db.url=" + database, "--server.port=0", "--drylap.work.threads=0"))
                .rootCause()
                .hasMessageContaining("DRYLAP_WORK_THREADS is 0; accepted: 1 to 64 for a worker");
    }

    private static void awaitTrue(ConfigurableApplicationContext node, String question) {
        Awaitility.await().atMost(PATIENCE).until(() -> number(node, "select (" + question + ")::int") == 1);
    }

    private static long number(ConfigurableApplicationContext node, String query) {
        Object found = node.getBean(DSLContext.class).fetchValue(query);
        return found instanceof Number number ? number.longValue() : -1;
    }

    private static int get(int port, String path) throws IOException, InterruptedException {
        try (HttpClient client = HttpClient.newHttpClient()) {
            var request = HttpRequest.newBuilder(URI.create("http://localhost:%d%s".formatted(port, path)))
                    .build();
            return client.send(request, HttpResponse.BodyHandlers.discarding()).statusCode();
        }
    }

    private static int freePort() throws IOException {
        try (ServerSocket socket = new ServerSocket(0)) {
            return socket.getLocalPort();
        }
    }
}
