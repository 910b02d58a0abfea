package drylap.forecasts.formats;

import drylap.forecasts.ForecastReader;
import drylap.forecasts.ForecastWords;
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
    static final String ANSWER = ForecastWords.THE_ANSWER.with();

    private static final String OBJECT = ForecastWords.AN_OBJECT.with();
    private static final String LIST = ForecastWords.A_LIST.with();
    private static final String TEXT = ForecastWords.A_TEXT.with();
    private static final String NUMBER = ForecastWords.A_NUMBER.with();
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
            findings.add(ANSWER, ForecastWords.BYTES.with(bytes.length), ForecastWords.MOST_BYTES.with());
            return null;
        }
        try {
            JsonNode node = MAPPER.readTree(bytes);
            if (node.isObject()) return new Json(node, "", findings);
            findings.add(ANSWER, ForecastWords.NO_JSON_OBJECT.with(), ForecastWords.JSON_OBJECT.with());
        } catch (JacksonException unreadable) {
            var place = unreadable.getLocation();
            String where = place == null ? ANSWER : ForecastWords.AT.with(place.getLineNr(), place.getColumnNr());
            String reason = unreadable.getOriginalMessage().lines().findFirst().orElse("");
            findings.add(where, ForecastWords.NO_JSON.with(Findings.shown(reason)), ForecastWords.JSON.with());
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
        Json member = there(name, OBJECT);
        return member == null || member.is(member.node.isObject(), OBJECT) ? member : null;
    }

    @Nullable
    List<Json> list(String name) {
        Json member = there(name, LIST);
        if (member == null || !member.is(member.node.isArray(), LIST)) return null;
        return IntStream.range(0, member.node.size())
                .mapToObj(i -> new Json(member.node.get(i), "%s[%d]".formatted(member.path, i), findings))
                .toList();
    }

    @Nullable
    String text(String name) {
        Json member = there(name, TEXT);
        return member == null ? null : member.text();
    }

    @Nullable
    String text() {
        return is(node.isString(), TEXT) ? node.stringValue() : null;
    }

    @Nullable
    Double number(String name) {
        Json member = there(name, NUMBER);
        return member == null ? null : member.number();
    }

    @Nullable
    Double number() {
        return is(node.isNumber(), NUMBER) ? node.doubleValue() : null;
    }

    /** A time that says its offset. */
    @Nullable
    Instant instant(String name) {
        String text = text(name);
        if (text == null) return null;
        try {
            return OffsetDateTime.parse(text).toInstant();
        } catch (DateTimeException unreadable) {
            findings.add(
                    inner(name),
                    ForecastWords.NO_TIME.with(Findings.shown(text)),
                    ForecastWords.TIME_WITH_OFFSET.with());
            return null;
        }
    }

    boolean isNull() {
        return node.isNull();
    }

    void wrong(String wrong, String accepted) {
        findings.add(path.isEmpty() ? ANSWER : path, wrong, accepted);
    }

    private @Nullable Json there(String name, String accepted) {
        Json member = maybe(name);
        if (member == null)
            findings.add(
                    inner(name), (node.has(name) ? ForecastWords.IS_NULL : ForecastWords.IS_MISSING).with(), accepted);
        return member;
    }

    private boolean is(boolean right, String accepted) {
        if (!right) wrong(kind(), accepted);
        return right;
    }

    private String kind() {
        if (!node.isContainer()) return ForecastWords.HOLDS.with(Findings.shown(node.toString()));
        return (node.isArray() ? ForecastWords.IS_A_LIST : ForecastWords.IS_AN_OBJECT).with();
    }

    private String inner(String name) {
        return path.isEmpty() ? name : path + "." + name;
    }
}
