package drylap.forecasts.formats;

import drylap.forecasts.ForecastReader;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.JacksonException;
import tools.jackson.core.StreamReadConstraints;
import tools.jackson.core.StreamReadFeature;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** A part of a JSON answer with the path to it; what is missing or of another kind is written down where it was looked for. */
record Json(JsonNode node, String path, Findings findings) {
    private static final JsonMapper MAPPER = JsonMapper.builder(JsonFactory.builder()
                    .streamReadConstraints(StreamReadConstraints.builder()
                            .maxDocumentLength(ForecastReader.MOST_BYTES)
                            .maxNestingDepth(30)
                            .maxNumberLength(100)
                            .build())
                    .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
                    .build())
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .build();

    /** The whole answer; null, with the reason found, where it is no JSON object. */
    static @Nullable Json read(byte[] bytes, Findings findings) {
        if (bytes.length > ForecastReader.MOST_BYTES) {
            findings.add("the answer", "has %d bytes".formatted(bytes.length), "at most 8 MiB");
            return null;
        }
        try {
            JsonNode node = MAPPER.readTree(bytes);
            if (node.isObject()) return new Json(node, "", findings);
            findings.add("the answer", "is no JSON object", "a JSON object");
        } catch (JacksonException unreadable) {
            var place = unreadable.getLocation();
            String where = place == null
                    ? "the answer"
                    : "line %d, column %d".formatted(place.getLineNr(), place.getColumnNr());
            String reason = unreadable.getOriginalMessage().lines().findFirst().orElse("");
            findings.add(where, "is no JSON (%s)".formatted(Findings.shown(reason)), "whole JSON in UTF-8");
        }
        return null;
    }

    /** A member of any kind but null; null where there is none, which is not a problem. */
    @Nullable
    Json maybe(String name) {
        JsonNode member = node.get(name);
        return member == null || member.isNull() ? null : new Json(member, inner(name), findings);
    }

    @Nullable
    Json object(String name) {
        Json member = there(name, "an object");
        return member == null || member.is(member.node.isObject(), "an object") ? member : null;
    }

    @Nullable
    List<Json> list(String name) {
        Json member = there(name, "a list");
        if (member == null || !member.is(member.node.isArray(), "a list")) return null;
        return IntStream.range(0, member.node.size())
                .mapToObj(i -> new Json(member.node.get(i), "%s[%d]".formatted(member.path, i), findings))
                .toList();
    }

    @Nullable
    String text(String name) {
        Json member = there(name, "a text");
        return member == null ? null : member.text();
    }

    @Nullable
    String text() {
        return is(node.isString(), "a text") ? node.stringValue() : null;
    }

    @Nullable
    Double number(String name) {
        Json member = there(name, "a number");
        return member == null ? null : member.number();
    }

    @Nullable
    Double number() {
        return is(node.isNumber(), "a number") ? node.doubleValue() : null;
    }

    /** A time that says its offset. */
    @Nullable
    Instant instant(String name) {
        String text = text(name);
        if (text == null) return null;
        try {
            return OffsetDateTime.parse(text).toInstant();
        } catch (DateTimeException unreadable) {
            findings.add(inner(name), "is no time (%s)".formatted(Findings.shown(text)), "a time with its offset");
            return null;
        }
    }

    boolean isNull() {
        return node.isNull();
    }

    void wrong(String wrong, String accepted) {
        findings.add(path.isEmpty() ? "the answer" : path, wrong, accepted);
    }

    private @Nullable Json there(String name, String accepted) {
        Json member = maybe(name);
        if (member == null) findings.add(inner(name), node.has(name) ? "is null" : "is missing", accepted);
        return member;
    }

    private boolean is(boolean right, String accepted) {
        if (!right) wrong("is %s".formatted(kind()), accepted);
        return right;
    }

    private String kind() {
        return node.isContainer() ? node.isArray() ? "a list" : "an object" : Findings.shown(node.toString());
    }

    private String inner(String name) {
        return path.isEmpty() ? name : path + "." + name;
    }
}
