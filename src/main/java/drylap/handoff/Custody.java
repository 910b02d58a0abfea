package drylap.handoff;

import drylap.speech.Saying;
import java.time.Instant;

/** In whose hands an opening is. */
public sealed interface Custody {
    /** Never released yet. */
    record Unreleased() implements Custody {}

    record Released(long act, Instant at, String by) implements Custody {}

    record Accepted(long act, Instant at, String by) implements Custody {}

    /** Given back: the window crew's again, until it is released anew. */
    record Returned(long act, Instant at, String by, ReturnReason reason, String note) implements Custody {}

    static final Custody UNRELEASED = new Unreleased();

    /** Neither the window crew's to change, nor yet to be released. */
    default boolean handedOver() {
        return switch (this) {
            case Released _, Accepted _ -> true;
            case Unreleased _, Returned _ -> false;
        };
    }

    default Saying saying() {
        return switch (this) {
            case Unreleased _ -> Saying.of("not released");
            case Released _ -> Saying.of("released, not accepted yet");
            case Accepted _ -> Saying.of("accepted by the follow-on trade");
            case Returned returned ->
                Saying.of("returned: {0}", Saying.of(returned.reason().words()));
        };
    }
}
