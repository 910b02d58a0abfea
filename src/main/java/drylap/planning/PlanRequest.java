package drylap.planning;

import drylap.platform.Processors;
import java.time.Duration;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * How to plan: at most {@code time} and at most {@code moves}, whichever is given and comes first. The same folder, seed and
 * number of moves give the same plan.
 *
 * @param now the moment to plan from; absent: the first shift's start
 * @param processors how many may be busy with it at once
 */
public record PlanRequest(
        @Nullable Instant now,
        @Nullable Duration time,
        @Nullable Long moves,
        long seed,
        int processors) {
    /** On all processors. */
    public PlanRequest(@Nullable Instant now, @Nullable Duration time, @Nullable Long moves, long seed) {
        this(now, time, moves, seed, Runtime.getRuntime().availableProcessors());
    }

    public static PlanRequest seconds(long seconds) {
        return new PlanRequest(null, Duration.ofSeconds(seconds), null, 1);
    }

    /** As {@code this}, beside pages that want to be answered. */
    public PlanRequest besideOthers() {
        return on(Math.min(processors, Processors.forBackgroundWork()));
    }

    /** What is left of {@code this} after some searching. */
    public PlanRequest after(Duration elapsed, long tried) {
        Duration left = time == null || time.compareTo(elapsed) <= 0 ? Duration.ZERO : time.minus(elapsed);
        return new PlanRequest(
                now, time == null ? null : left, moves == null ? null : Math.max(0, moves - tried), seed, processors);
    }

    /** As {@code this}, on so many processors, one at least. */
    public PlanRequest on(int some) {
        return new PlanRequest(now, time, moves, seed, Math.max(1, some));
    }
}
