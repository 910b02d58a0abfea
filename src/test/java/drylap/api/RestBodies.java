package drylap.api;

import drylap.progress.MarkRequest;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The bodies of changes as scripts send them, from bytes to requests, without the server around. */
public final class RestBodies {
    private RestBodies() {}

    /** @throws IllegalStateException where what was read could not be kept as it is, or was refused without words */
    public static void read(byte[] bytes) {
        JsonNode body;
        try {
            body = JsonMapper.shared().readTree(bytes);
        } catch (JacksonException noJson) {
            return;
        }
        refusedOr(() -> MarkBatch.read(body).forEach(RestBodies::look));
        refusedOr(() -> {
            var release = ReleaseBody.read(body);
            must(keepable(release.note()) && !release.seen().isEmpty(), "a release that cannot be kept");
        });
    }

    private static void refusedOr(Runnable reading) {
        try {
            reading.run();
        } catch (BadFields refused) {
            must(
                    !refused.fields().isEmpty()
                            && refused.fields().stream()
                                    .noneMatch(one -> one.field().isBlank()
                                            || one.problem().isBlank()),
                    "refused without words");
        }
    }

    private static void look(MarkRequest mark) {
        for (String text : List.of(
                mark.opening().value(),
                mark.line(),
                Objects.requireNonNullElse(mark.note(), ""),
                Objects.requireNonNullElse(mark.reason(), ""))) must(keepable(text), "a mark that cannot be kept");
    }

    /** PostgreSQL keeps UTF-8 without zeros. */
    private static boolean keepable(String text) {
        return StandardCharsets.UTF_8.newEncoder().canEncode(text) && text.indexOf('\0') < 0;
    }

    private static void must(boolean holds, String why) {
        if (!holds) throw new IllegalStateException(why);
    }
}
