package drylap.planning;

import java.time.Duration;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * How to plan: at most {@code time} and at most {@code moves}, whichever is given and comes first. The same folder, seed and
 * number of moves give the same plan.
 *
 * @param now the moment to plan from; absent: the first shift's start
 */
public record PlanRequest(
        @Nullable Instant now,
        @Nullable Duration time,
        @Nullable Long moves,
        long seed) {
    public static PlanRequest seconds(long seconds) {
        return new PlanRequest(null, Duration.ofSeconds(seconds), null, 1);
    }
}
