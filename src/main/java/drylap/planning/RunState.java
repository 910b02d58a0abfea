package drylap.planning;

import org.jspecify.annotations.Nullable;

/**
 * How a folder's newest planning run stands.
 *
 * @param progress all zero until the run has its first legal plan
 * @param failure why it failed, in words; present only then
 */
public record RunState(
        RunId id,
        Status status,
        PlanProgress progress,
        @Nullable String failure) {
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
