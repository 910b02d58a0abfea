package drylap.load;

import java.io.IOException;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.WebSocket;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.Map;
import java.util.concurrent.CompletionException;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** One person's cookies and what they ask; all of them share the connections, as behind a proxy. */
public final class Browser {
    static final JsonMapper JSON = JsonMapper.builder().build();
    private static final Pattern FORM_TOKEN = Pattern.compile("<meta name=\"_csrf\" content=\"([^\"]+)\"");
    private static final Duration PATIENCE = Duration.ofSeconds(60);
    private static final int REDIRECT = 302;

    private final HttpClient http;
    private final URI node;
    private final Map<String, String> cookies = new ConcurrentHashMap<>();
    private String header = "X-XSRF-TOKEN";
    private String token = "";

    public Browser(HttpClient http, URI node) {
        this.http = http;
        this.node = node;
    }

    /** An answer, or {@link IOException} where there is none in time. */
    public record Answer(int status, String body, String etag) {
        JsonNode json() throws IOException {
            try {
                return JSON.readTree(body);
            } catch (RuntimeException none) {
                throw new IOException("no JSON in an answer with " + status, none);
            }
        }

        /** @throws IOException with the status, where it is not 200 */
        Answer good() throws IOException {
            if (status != 200) throw new IOException("answered with " + status);
            return this;
        }
    }

    public void signIn(String name, String password) throws IOException, InterruptedException {
        var page = FORM_TOKEN.matcher(get("/sign-in").good().body());
        if (!page.find()) throw new IOException("the sign-in page has no token");
        String form = "username=%s&password=%s&_csrf=%s".formatted(name, encoded(password), encoded(page.group(1)));
        var answer = send(request("/sign-in")
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(BodyPublishers.ofString(form)));
        if (answer.status() != REDIRECT) throw new IOException("signing in is answered with " + answer.status());
        JsonNode me = get("/api/me").good().json();
        header = me.path("header").stringValue();
        token = me.path("token").stringValue();
    }

    public Answer get(String path) throws IOException, InterruptedException {
        return send(request(path).GET());
    }

    /** As browsers ask: what comes packed stays so, and is no text. */
    Answer packed(String path) throws IOException, InterruptedException {
        return send(request(path).header("Accept-Encoding", "gzip").GET());
    }

    /** What a script of the page sends, with what keeps other sites from sending it. */
    Answer post(String path, String json, String... more) throws IOException, InterruptedException {
        var request = request(path).header("Content-Type", "application/json").header(header, token);
        if (more.length > 0) request.headers(more);
        return send(request.POST(BodyPublishers.ofString(json)));
    }

    /** What Vaadin's client sends. */
    Answer tell(String path, String json) throws IOException, InterruptedException {
        return send(request(path)
                .header("Content-Type", "application/json; charset=UTF-8")
                .POST(BodyPublishers.ofString(json)));
    }

    WebSocket socket(String path, WebSocket.Listener listener) throws IOException {
        try {
            return http.newWebSocketBuilder()
                    .header("Cookie", cookies())
                    .connectTimeout(PATIENCE)
                    .buildAsync(URI.create("ws" + node.resolve(path).toString().substring("http".length())), listener)
                    .join();
        } catch (CompletionException none) {
            throw new IOException("no socket: " + none.getCause(), none);
        }
    }

    private HttpRequest.Builder request(String path) {
        var request = HttpRequest.newBuilder(node.resolve(path)).timeout(PATIENCE);
        if (!cookies.isEmpty()) request.header("Cookie", cookies());
        return request;
    }

    private String cookies() {
        return cookies.entrySet().stream()
                .map(one -> one.getKey() + "=" + one.getValue())
                .collect(Collectors.joining("; "));
    }

    private Answer send(HttpRequest.Builder request) throws IOException, InterruptedException {
        HttpResponse<String> answer = http.send(request.build(), HttpResponse.BodyHandlers.ofString());
        answer.headers().allValues("Set-Cookie").forEach(this::keep);
        return new Answer(
                answer.statusCode(),
                answer.body(),
                answer.headers().firstValue("ETag").orElse(""));
    }

    private void keep(String cookie) {
        String[] pair = cookie.split(";", 2)[0].split("=", 2);
        if (pair.length == 2 && !pair[1].isEmpty()) cookies.put(pair[0], pair[1]);
        else cookies.remove(pair[0]);
    }

    static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }
}
