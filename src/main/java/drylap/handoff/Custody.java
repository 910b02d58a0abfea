package drylap.handoff;

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

    default String words() {
        return switch (this) {
            case Unreleased _ -> "not released";
            case Released _ -> "released, not accepted yet";
            case Accepted _ -> "accepted by the follow-on trade";
            case Returned returned -> "returned: " + returned.reason().words();
        };
    }
}
