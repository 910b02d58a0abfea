package drylap.faults;

import java.io.IOException;
import java.net.CookieManager;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Talks to nodes as another program does, with a token, and as the page of the steps does, signed in. */
final class Program {
    static final String PASSWORD = "for this trial only";
    private static final JsonMapper JSON = JsonMapper.builder().build();
    private static final Duration WAIT = Duration.ofSeconds(10);
    /** Bringing a folder in and planning it take longer than a mark. */
    private static final Duration LONG_WAIT = Duration.ofSeconds(60);

    private final HttpClient http =
            HttpClient.newBuilder().connectTimeout(Duration.ofSeconds(2)).build();
    private volatile String token = "";

    /** @param etag of what was read */
    record Answer(int status, JsonNode json, String etag) {}

    /** The page of the steps on one node; it signs in again where the node has forgotten it. */
    static final class Page {
        private static final Pattern FORM_TOKEN = Pattern.compile("<meta name=\"_csrf\" content=\"([^\"]+)\"");
        private final TrialNode node;
        private HttpClient http = client();
        private String header = "";
        private String value = "";

        Page(TrialNode node) {
            this.node = node;
        }

        private static HttpClient client() {
            return HttpClient.newBuilder()
                    .connectTimeout(Duration.ofSeconds(2))
                    .cookieHandler(new CookieManager())
                    .build();
        }

        synchronized JsonNode marks(String batch) throws IOException, InterruptedException {
            if (header.isEmpty()) signIn();
            var request = HttpRequest.newBuilder(node.at("/api/marks"))
                    .timeout(WAIT)
                    .header("Content-Type", "application/json")
                    .header(header, value)
                    .POST(BodyPublishers.ofString(batch));
            var answer = http.send(request.build(), HttpResponse.BodyHandlers.ofString());
            if (answer.statusCode() == 200) return JSON.readTree(answer.body());
            header = "";
            throw new IOException("marks are answered with %d: %s".formatted(answer.statusCode(), answer.body()));
        }

        private void signIn() throws IOException, InterruptedException {
            http = client();
            String form = "username=trial&password=%s&_csrf=%s".formatted(encoded(PASSWORD), encoded(tokenOfTheForm()));
            var login = HttpRequest.newBuilder(node.at("/sign-in"))
                    .timeout(WAIT)
                    .header("Content-Type", "application/x-www-form-urlencoded")
                    .POST(BodyPublishers.ofString(form));
            http.send(login.build(), HttpResponse.BodyHandlers.discarding());
            var me = http.send(
                    HttpRequest.newBuilder(node.at("/api/me")).timeout(WAIT).build(),
                    HttpResponse.BodyHandlers.ofString());
            if (me.statusCode() != 200) throw new IOException("signing in is answered with " + me.statusCode());
            JsonNode said = JSON.readTree(me.body());
            value = said.path("token").stringValue();
            header = said.path("header").stringValue();
        }

        private String tokenOfTheForm() throws IOException, InterruptedException {
            var page = http.send(
                    HttpRequest.newBuilder(node.at("/sign-in")).timeout(WAIT).build(),
                    HttpResponse.BodyHandlers.ofString());
            var found = FORM_TOKEN.matcher(page.body());
            if (!found.find()) throw new IOException("the sign-in page is answered with " + page.statusCode());
            return found.group(1);
        }
    }

    private static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }

    void withToken(String secret) {
        token = secret;
    }

    Answer get(TrialNode node, String path) throws IOException, InterruptedException {
        return send(HttpRequest.newBuilder(node.at(path)).GET());
    }

    Answer post(TrialNode node, String path, String key, String etag, String body)
            throws IOException, InterruptedException {
        return send(HttpRequest.newBuilder(node.at(path))
                .header("Content-Type", "application/json")
                .header("Idempotency-Key", key)
                .header("If-Match", etag)
                .POST(BodyPublishers.ofString(body)));
    }

    private Answer send(HttpRequest.Builder request) throws IOException, InterruptedException {
        var answer = http.send(
                request.timeout(WAIT).header("Authorization", "Bearer " + token).build(),
                HttpResponse.BodyHandlers.ofString());
        boolean json = answer.statusCode() < 300;
        return new Answer(
                answer.statusCode(),
                json ? JSON.readTree(answer.body()) : JSON.createObjectNode(),
                answer.headers().firstValue("ETag").orElse(""));
    }

    /** At the trial's own door. */
    String ask(TrialNode node, String path) throws IOException, InterruptedException {
        URI address = node.door(path.replace(" ", "%20"));
        var answer = http.send(
                HttpRequest.newBuilder(address)
                        .timeout(LONG_WAIT)
                        .POST(BodyPublishers.noBody())
                        .build(),
                HttpResponse.BodyHandlers.ofString());
        if (answer.statusCode() != 200) throw new IOException(path + ": " + answer.body());
        return answer.body();
    }

    static @Nullable Long numberAfter(String words, String text) {
        return text.startsWith(words) ? Long.valueOf(text.substring(words.length())) : null;
    }
}
