package drylap.handoff;

import drylap.kernel.OpeningId;
import drylap.speech.Saying;
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

        static NotYet because(OpeningId opening, Saying saying) {
            return new NotYet(List.of(new Hindrance(opening, saying)));
        }
    }

    /** Someone else was quicker: what the person looked at is no longer so. Nothing was changed. */
    record ChangedMeanwhile(OpeningId opening, Saying saying) implements HandoffResult {}

    /** What speaks against it at one opening. */
    record Hindrance(OpeningId opening, Saying saying) {
        public String words() {
            return saying.words();
        }
    }

    default boolean done() {
        return this instanceof Done || this instanceof AlreadyDone;
    }

    default Saying saying() {
        return switch (this) {
            case Done(var act) -> Saying.of(act.kind().words());
            case AlreadyDone(var act) ->
                Saying.of("{0} already", Saying.of(act.kind().words()));
            case NotYet(var hindrances) ->
                Saying.list(
                        "; ",
                        hindrances.stream()
                                .map(one -> of(one.opening(), one.saying()))
                                .toList());
            case ChangedMeanwhile(var opening, var what) -> of(opening, what);
        };
    }

    default String words() {
        return saying().words();
    }

    private static Saying of(OpeningId opening, Saying what) {
        return Saying.of("{0}: {1}", opening, what);
    }
}
