package drylap.planning;

import drylap.speech.Saying;
import java.time.Instant;

/**
 * One rule that a visit's start has to wait for.
 *
 * @param at from when the rule lets it start
 * @param binds whether this is what the start waits for
 */
public record Bound(BoundKind kind, Instant at, boolean binds, Saying saying) {
    public String words() {
        return saying.words();
    }
}
