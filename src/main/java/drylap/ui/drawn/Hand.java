package drylap.ui.drawn;

import com.fasterxml.jackson.annotation.JsonValue;
import drylap.handoff.Custody;
import drylap.progress.OpeningState;

/** In whose hands an opening is, as a drawing shows it. */
public enum Hand {
    NOT_RELEASED("not released"),
    /** The folder was imported with the release ticked; nobody signed for it here. */
    RELEASED_BEFORE("released before the log"),
    RELEASED("released"),
    ACCEPTED("accepted"),
    RETURNED("returned");

    private final String words;

    Hand(String words) {
        this.words = words;
    }

    static Hand of(OpeningState state, Custody custody) {
        return switch (custody) {
            case Custody.Released _ -> RELEASED;
            case Custody.Accepted _ -> ACCEPTED;
            case Custody.Returned _ -> RETURNED;
            case Custody.Unreleased _ -> state.released() ? RELEASED_BEFORE : NOT_RELEASED;
        };
    }

    public String words() {
        return words;
    }

    /** The window crew has let go of it: the trade that follows may come. */
    public boolean letGo() {
        return this == RELEASED || this == ACCEPTED || this == RELEASED_BEFORE;
    }

    @JsonValue
    String code() {
        return name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
    }
}
