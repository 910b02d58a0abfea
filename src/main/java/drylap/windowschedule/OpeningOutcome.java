package drylap.windowschedule;

import drylap.kernel.OpeningId;
import drylap.sites.Opening;
import drylap.sites.OpeningNote;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What one opening of a schedule becomes.
 *
 * @param now as the site has it; none for a new one
 * @param becomes as it will be; where it stays as it is, the same
 * @param differences between what stands and what the schedule says, those that are held included
 */
public record OpeningOutcome(
        Kind kind, @Nullable Opening now, Opening becomes, List<Difference> differences, OpeningNote note) {
    public OpeningOutcome {
        differences = List.copyOf(differences);
    }

    /** In the words of the page: new, changed, same, or begun and left as it is. */
    public enum Kind {
        NEW,
        CHANGED,
        SAME,
        HELD
    }

    /** @param held not changed, since work has begun at the opening */
    public record Difference(String what, String was, String said, boolean held) {}

    public OpeningId id() {
        return becomes.id();
    }
}
