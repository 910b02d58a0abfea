package drylap.planning;

import java.time.Duration;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * How a folder's newest planning run stands.
 *
 * @param limit how long it may take, as it was asked; absent where only its moves are limited
 * @param progress all zero until the run has its first legal plan
 * @param points how the cost of its best plan fell, in the order of time
 * @param failure why it failed, in words; present only then
 */
public record RunState(
        RunId id,
        Status status,
        @Nullable Duration limit,
        PlanProgress progress,
        List<RunPoint> points,
        @Nullable String failure) {
    public RunState {
        points = List.copyOf(points);
    }

    public enum Status {
        QUEUED,
        RUNNING,
        DONE,
        FAILED,
        STOPPED;

        /** Nothing more comes of this run. */
        public boolean ended() {
            return this != QUEUED && this != RUNNING;
        }
    }
}
