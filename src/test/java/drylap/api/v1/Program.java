package drylap.api.v1;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * Another program: it makes its requests from the document alone, and holds every answer against it.
 *
 * @param used the operations that succeeded so far, of all programs together
 */
record Program(String address, Document document, String token, Set<String> used) {
    static final JsonMapper JSON = JsonMapper.builder().build();
    private static final HttpClient HTTP = HttpClient.newHttpClient();

    record Answer(int status, @Nullable String etag, Map<String, String> headers, JsonNode json) {
        String tag() {
            if (etag == null) throw new AssertionError("no ETag came with " + json);
            return etag;
        }
    }

    /** @param given the parameters by name, whatever they are in */
    Answer call(String operation, Map<String, ?> given, @Nullable Object body) {
        var one = document.operation(operation);
        var left = new TreeMap<String, Object>(given);
        String path = one.path();
        var query = new StringBuilder();
        var request = HttpRequest.newBuilder();
        for (var parameter : document.parameters(one)) {
            Object value = left.remove(parameter.name());
            if (value == null) {
                assertThat(parameter.required())
                        .as("%s needs %s", operation, parameter.name())
                        .isFalse();
                continue;
            }
            String text = String.valueOf(value);
            switch (parameter.in()) {
                case "path" -> path = path.replace("{%s}".formatted(parameter.name()), encoded(text));
                case "query" ->
                    query.append(query.isEmpty() ? "?" : "&")
                            .append(parameter.name())
                            .append("=")
                            .append(encoded(text));
                default -> request.header(parameter.name(), text);
            }
        }
        assertThat(left).as("parameters that %s does not have", operation).isEmpty();
        request.uri(URI.create(address + path + query)).header("Authorization", "Bearer " + token);
        return judged(
                operation,
                one,
                send(request.method(one.method(), content(one, request, body)).build()));
    }

    /** As somebody would who does not keep to the document. */
    HttpResponse<String> raw(HttpRequest.Builder request) {
        return send(request.header("Authorization", "Bearer " + token).build());
    }

    HttpRequest.Builder at(String path) {
        return HttpRequest.newBuilder(URI.create(address + path));
    }

    private HttpRequest.BodyPublisher content(
            Document.Operation operation, HttpRequest.Builder request, @Nullable Object body) {
        if (body == null) return HttpRequest.BodyPublishers.noBody();
        var types = document.resolved(operation.node().path("requestBody")).path("content");
        String type = types.propertyNames().iterator().next();
        request.header("Content-Type", type);
        if (body instanceof String text) return HttpRequest.BodyPublishers.ofString(text);
        JsonNode json = JSON.valueToTree(body);
        assertThat(document.wrong(types.path(type).path("schema"), json))
                .as("the document on %s", json)
                .isEmpty();
        return HttpRequest.BodyPublishers.ofString(json.toString());
    }

    private Answer judged(String operation, Document.Operation one, HttpResponse<String> response) {
        var said = document.answer(one, response.statusCode());
        var types = said.path("content");
        String type = response.headers().firstValue("Content-Type").orElse("").replaceFirst(";.*", "");
        assertThat(types.propertyNames())
                .as("%s: %s", operation, response.body())
                .contains(type);
        JsonNode json = JSON.readTree(response.body());
        assertThat(document.wrong(types.path(type).path("schema"), json))
                .as("the document on the answer %d of %s: %s", response.statusCode(), operation, json)
                .isEmpty();
        said.path("headers").properties().forEach(header -> {
            if (document.resolved(header.getValue()).path("required").asBoolean(false))
                assertThat(response.headers().firstValue(header.getKey()))
                        .as("header %s of %s", header.getKey(), operation)
                        .isPresent();
        });
        if (response.statusCode() < 300) used.add(operation);
        return new Answer(
                response.statusCode(),
                response.headers().firstValue("ETag").orElse(null),
                response.headers().map().entrySet().stream()
                        .collect(Collectors.toMap(
                                header -> header.getKey().toLowerCase(java.util.Locale.ROOT),
                                header -> header.getValue().getFirst())),
                json);
    }

    static HttpResponse<String> send(HttpRequest request) {
        try {
            return HTTP.send(request, HttpResponse.BodyHandlers.ofString());
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        } catch (InterruptedException stopped) {
            throw new AssertionError(stopped);
        }
    }

    private static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8).replace("+", "%20");
    }
}
