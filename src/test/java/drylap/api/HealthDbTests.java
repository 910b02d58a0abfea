package drylap.api;

import static org.assertj.core.api.Assertions.assertThat;

import drylap.ui.PageTest;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import org.junit.jupiter.api.Test;
import org.springframework.boot.test.web.server.LocalServerPort;

/** The two addresses that are open to whoever runs the node, and nothing beside them. */
@PageTest
class HealthDbTests {
    @LocalServerPort
    private int port;

    @Test
    void a_node_says_that_it_lives_and_is_ready_to_who_is_not_signed_in_and_begins_no_session() throws Exception {
        for (String path : new String[] {"/health/live", "/health/ready"}) {
            var answer = send(HttpRequest.newBuilder(at(path)).GET());
            assertThat(answer.statusCode()).as(path).isEqualTo(200);
            assertThat(answer.body()).isEqualTo(path.equals("/health/live") ? "alive\n" : "ready\n");
            assertThat(answer.headers().firstValue("Set-Cookie")).isEmpty();
            assertThat(answer.headers().firstValue("Cache-Control")).hasValue("no-store");
        }
    }

    @Test
    void nothing_else_is_there() throws Exception {
        for (String path : new String[] {"/health", "/health/env", "/health/ready/more"})
            assertThat(send(HttpRequest.newBuilder(at(path)).GET()).statusCode())
                    .as(path)
                    .isEqualTo(404);
        assertThat(send(HttpRequest.newBuilder(at("/health/live")).POST(BodyPublishers.noBody()))
                        .statusCode())
                .isIn(403, 404);
    }

    private URI at(String path) {
        return URI.create("http://localhost:%d%s".formatted(port, path));
    }

    private static HttpResponse<String> send(HttpRequest.Builder request) throws IOException, InterruptedException {
        try (HttpClient client = HttpClient.newHttpClient()) {
            return client.send(request.build(), HttpResponse.BodyHandlers.ofString());
        }
    }
}
