package drylap.platform;

import com.github.kagkarlsson.scheduler.task.CompletionHandler;
import com.github.kagkarlsson.scheduler.task.CompletionHandler.OnCompleteRemove;
import com.github.kagkarlsson.scheduler.task.ExecutionContext;
import com.github.kagkarlsson.scheduler.task.FailureHandler;
import com.github.kagkarlsson.scheduler.task.Task;
import com.github.kagkarlsson.scheduler.task.TaskInstance;
import com.github.kagkarlsson.scheduler.task.helper.Tasks;
import java.time.Duration;

/** The one task that db-scheduler knows: do the job of this number. The job itself stands in our own table. */
final class JobTask {
    static final String NAME = "job";
    private static final Duration RETRY = Duration.ofSeconds(10);

    private JobTask() {}

    static TaskInstance<Void> instance(JobId id) {
        return new TaskInstance<>(NAME, Long.toString(id.value()));
    }

    /** A job's own failure is written down by {@link JobRuns}; what fails here is the database, so it is tried again later. */
    static Task<Void> of(JobRuns runs) {
        return Tasks.custom(NAME, Void.class)
                .onDeadExecutionRevive()
                .onFailure(new FailureHandler.OnFailureRetryLater<>(RETRY))
                .execute((instance, context) -> run(runs, instance, context));
    }

    private static CompletionHandler<Void> run(JobRuns runs, TaskInstance<Void> instance, ExecutionContext context) {
        JobId id = new JobId(Long.parseLong(instance.getId()));
        boolean over = runs.run(id, context.getSchedulerState()::isShuttingDown);
        return over
                ? new OnCompleteRemove<>()
                : (complete, operations) -> operations.reschedule(complete, complete.getTimeDone());
    }
}
