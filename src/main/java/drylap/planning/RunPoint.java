package drylap.planning;

import java.time.Duration;

/**
 * What the best plan of a run cost from a moment on.
 *
 * @param medium the cost of what is left out, which counts above all of {@code soft}
 * @param unplanned how many tasks are left out
 */
public record RunPoint(Duration at, long medium, long soft, int unplanned) {
    static RunPoint of(PlanProgress progress) {
        return new RunPoint(progress.elapsed(), progress.medium(), progress.soft(), progress.unplanned());
    }

    boolean costsAs(RunPoint other) {
        return medium == other.medium && soft == other.soft && unplanned == other.unplanned;
    }
}
