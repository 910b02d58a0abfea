package drylap.api;

import static org.assertj.core.api.Assertions.assertThat;

import drylap.kernel.Reach;
import drylap.load.Browser;
import drylap.security.Person;
import drylap.security.Role;
import drylap.security.TestPeople;
import drylap.ui.PageTest;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import tools.jackson.databind.json.JsonMapper;

/** What the node counts is told to who shows the token or looks after the machine, and to nobody else; a refusal names its request. */
@PageTest
class MetricsDbTests {
    @LocalServerPort
    private int port;

    @Autowired
    private TestPeople people;

    @Test
    void without_the_token_there_is_nothing_to_read() throws Exception {
        for (String shown : new String[] {"", "Bearer wrong-one-of-some-length", PageTest.METRICS_TOKEN}) {
            var answer = ask("/metrics", shown);
            assertThat(answer.statusCode()).as(shown).isEqualTo(401);
            assertThat(answer.body()).isEmpty();
            assertThat(answer.headers().firstValue("Set-Cookie")).isEmpty();
        }
    }

    @Test
    void with_the_token_requests_jobs_pool_pages_and_the_process_are_told_and_nobody_is_named() throws Exception {
        Person who = people.add(Role.ADMINISTRATOR, Reach.EVERYWHERE, null);
        try (var http = HttpClient.newHttpClient()) {
            new Browser(http, at("/")).signIn(who.signInName(), TestPeople.PASSWORD);
        }

        var answer = ask("/metrics", "Bearer " + PageTest.METRICS_TOKEN);

        assertThat(answer.statusCode()).isEqualTo(200);
        assertThat(answer.headers().firstValue("Content-Type").orElseThrow()).startsWith("text/plain;version=0.0.4");
        assertThat(answer.body())
                .contains(
                        "drylap_requests_seconds_count{method=\"GET\",route=\"/api/me\",status=\"200\"}",
                        "drylap_database_connections_used",
                        "drylap_pages_open",
                        "drylap_push_connections",
                        "jvm_memory_used_bytes")
                .doesNotContain(who.signInName(), who.name());
    }

    @Test
    void a_session_opens_it_to_who_looks_after_the_machine_only() throws Exception {
        try (var http = HttpClient.newHttpClient()) {
            var administrator = new Browser(http, at("/"));
            administrator.signIn(
                    people.add(Role.ADMINISTRATOR, Reach.EVERYWHERE, null).signInName(), TestPeople.PASSWORD);
            var scheduler = new Browser(http, at("/"));
            scheduler.signIn(people.scheduler().signInName(), TestPeople.PASSWORD);

            assertThat(administrator.get("/metrics").status()).isEqualTo(200);
            assertThat(scheduler.get("/metrics").status()).isEqualTo(401);
        }
    }

    /** RFC 9457, 3.1.5: the instance identifies the occurrence. */
    @Test
    void a_problem_is_named_by_its_request_and_two_requests_never_alike() throws Exception {
        var one = ask("/api/me", "");
        var other = ask("/api/me", "");

        String id = one.headers().firstValue("X-Request-Id").orElseThrow();
        assertThat(JsonMapper.builder()
                        .build()
                        .readTree(one.body())
                        .path("instance")
                        .stringValue())
                .isEqualTo("urn:uuid:" + id);
        assertThat(other.headers().firstValue("X-Request-Id").orElseThrow()).isNotEqualTo(id);
    }

    private URI at(String path) {
        return URI.create("http://localhost:%d%s".formatted(port, path));
    }

    private HttpResponse<String> ask(String path, String authorization) throws Exception {
        var request = HttpRequest.newBuilder(at(path));
        if (!authorization.isEmpty()) request.header("Authorization", authorization);
        try (var http = HttpClient.newHttpClient()) {
            return http.send(request.build(), HttpResponse.BodyHandlers.ofString());
        }
    }
}
