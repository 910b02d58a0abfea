package drylap.platform;

import com.github.kagkarlsson.scheduler.task.helper.RecurringTask;
import com.github.kagkarlsson.scheduler.task.helper.Tasks;
import com.github.kagkarlsson.scheduler.task.schedule.FixedDelay;

/** Regular work as db-scheduler knows it. */
final class RegularTask {
    private RegularTask() {}

    static RecurringTask<Void> of(RegularWork work) {
        return Tasks.recurring(work.name(), FixedDelay.of(work.pause())).execute((instance, context) -> work.run());
    }
}
