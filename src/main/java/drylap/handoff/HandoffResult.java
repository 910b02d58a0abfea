package drylap.handoff;

import drylap.kernel.OpeningId;
import java.util.List;

/** What became of an act. */
public sealed interface HandoffResult {
    record Done(HandoffAct act) implements HandoffResult {}

    /** The same act was sent before; nothing was added. */
    record AlreadyDone(HandoffAct act) implements HandoffResult {}

    /** It cannot be; nothing was changed at any of its openings. */
    record NotYet(List<Hindrance> hindrances) implements HandoffResult {
        public NotYet {
            hindrances = List.copyOf(hindrances);
        }

        static NotYet because(OpeningId opening, String words) {
            return new NotYet(List.of(new Hindrance(opening, words)));
        }
    }

    /** Someone else was quicker: what the person looked at is no longer so. Nothing was changed. */
    record ChangedMeanwhile(OpeningId opening, String words) implements HandoffResult {}

    /** What speaks against it at one opening. */
    record Hindrance(OpeningId opening, String words) {}

    default boolean done() {
        return this instanceof Done || this instanceof AlreadyDone;
    }

    default String words() {
        return switch (this) {
            case Done(var act) -> act.kind().words();
            case AlreadyDone(var act) -> act.kind().words() + " already";
            case NotYet(var hindrances) ->
                hindrances.stream()
                        .map(one -> "%s: %s".formatted(one.opening(), one.words()))
                        .collect(java.util.stream.Collectors.joining("; "));
            case ChangedMeanwhile(var opening, var words) -> "%s: %s".formatted(opening, words);
        };
    }
}
