package drylap.api;

import com.fasterxml.jackson.annotation.JsonInclude;
import drylap.handoff.HandoffResult;
import drylap.speech.Speech;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What became of a release.
 *
 * @param outcome {@code released}, {@code already}, {@code not-yet} or {@code changed}; the last two changed nothing
 * @param record the number of its hand-over record
 * @param hindrances what speaks against it, opening by opening
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
record ReleaseAnswer(String outcome, String words, @Nullable Long record, List<Hindrance> hindrances) {
    record Hindrance(String opening, String words) {}

    static ReleaseAnswer of(HandoffResult result, Speech say) {
        String said = say.it(result.saying());
        return switch (result) {
            case HandoffResult.Done(var act) -> new ReleaseAnswer("released", said, act.id(), List.of());
            case HandoffResult.AlreadyDone(var act) -> new ReleaseAnswer("already", said, act.id(), List.of());
            case HandoffResult.NotYet(var hindrances) ->
                new ReleaseAnswer(
                        "not-yet",
                        said,
                        null,
                        hindrances.stream()
                                .map(one -> new Hindrance(one.opening().value(), say.it(one.saying())))
                                .toList());
            case HandoffResult.ChangedMeanwhile(var opening, var what) ->
                new ReleaseAnswer("changed", said, null, List.of(new Hindrance(opening.value(), say.it(what))));
        };
    }
}
