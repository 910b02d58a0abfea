package drylap.progress;

import drylap.kernel.Task;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * A task of the plan that the log shows as done.
 *
 * @param at when its last line was done, where known
 */
public record FinishedTask(Task task, @Nullable Instant at) {}
