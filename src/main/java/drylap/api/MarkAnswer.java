package drylap.api;

import com.fasterxml.jackson.annotation.JsonInclude;
import drylap.assembly.AsBuilt;
import drylap.assembly.Lap;
import drylap.assembly.LapSection;
import drylap.assembly.WorkLine;
import drylap.progress.MarkRequest;
import drylap.progress.MarkResult;
import drylap.speech.Speech;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * What became of one mark of a batch.
 *
 * @param outcome {@code marked}, {@code already} or {@code refused}
 * @param version of the opening, once it is marked
 * @param svg the lap as it would come out, drawn
 * @param lines the codes of the lines that stand in the way
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
record MarkAnswer(
        UUID key,
        String outcome,
        @Nullable String words,
        @Nullable Long version,
        @Nullable String by,
        @Nullable Instant at,
        @Nullable LapAnswer lap,
        @Nullable String svg,
        @Nullable List<String> lines) {

    record LapAnswer(String over, String under, String words) {}

    static MarkAnswer of(MarkRequest request, MarkResult result, Speech say) {
        UUID key = request.key();
        return switch (result) {
            case MarkResult.Marked marked ->
                new MarkAnswer(key, "marked", null, marked.state().version(), null, null, null, null, null);
            case MarkResult.AlreadyMarked already ->
                new MarkAnswer(key, "already", null, null, already.by(), already.at(), null, null, null);
            case MarkResult.NotYours foreign ->
                new MarkAnswer(key, "refused", say.it(foreign.saying()), null, null, null, null, null, null);
            case MarkResult.Refused refused -> refused(key, refused, say);
        };
    }

    private static MarkAnswer refused(UUID key, MarkResult.Refused refused, Speech say) {
        return new MarkAnswer(
                key,
                "refused",
                say.it(refused.saying()),
                null,
                null,
                null,
                lap(refused.lap(), say),
                svg(refused.asItWouldBe(), say),
                refused.lines().stream().map(WorkLine::code).toList());
    }

    private static @Nullable LapAnswer lap(@Nullable Lap lap, Speech say) {
        return lap == null ? null : new LapAnswer(lap.over().code(), lap.under().code(), say.it(lap.saying()));
    }

    private static @Nullable String svg(@Nullable AsBuilt built, Speech say) {
        return built == null ? null : LapSection.svg(built, LapSection.Layout.STACKED, say);
    }
}
