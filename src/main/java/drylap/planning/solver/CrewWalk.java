package drylap.planning.solver;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Goes through a crew's days as they will be lived: out, set up, work, on, and back. */
final class CrewWalk {
    /** Days out, minutes on the road, of set-up and after the shift's end. */
    record Totals(int days, int travel, int setup, int overtime) {
        int[] inOrder() {
            return new int[] {days, travel, setup, overtime};
        }
    }

    /** One stop of the walk; {@code wayBack} is more than nothing or nothing at the day's last stop only. */
    interface Visitor {
        void stop(WorkTask task, int travel, int setup, boolean lastOfDay, int wayBack);
    }

    private final Problem problem;
    private final Schedule schedule;

    CrewWalk(Problem problem, Schedule schedule) {
        this.problem = problem;
        this.schedule = schedule;
    }

    Totals totals(CrewCalendar crew, List<Unit> units) {
        int[] sum = new int[4];
        walk(crew, units, (task, travel, setup, lastOfDay, wayBack) -> {
            sum[1] += travel + wayBack;
            sum[2] += setup;
            if (!lastOfDay) return;
            sum[0]++;
            int home = schedule.start[task.index] + task.minutes + wayBack;
            sum[3] += Math.max(0, home - crew.end[schedule.day[task.index]]);
        });
        return new Totals(sum[0], sum[1], sum[2], sum[3]);
    }

    void walk(CrewCalendar crew, List<Unit> units, Visitor visitor) {
        WorkTask before = null;
        WorkTask waiting = null;
        for (WorkTask task : inOrder(crew, units)) {
            if (waiting != null) tell(crew, before, waiting, !sameDay(waiting, task), visitor);
            if (waiting != null) before = sameDay(waiting, task) ? waiting : null;
            waiting = task;
        }
        if (waiting != null) tell(crew, before, waiting, true, visitor);
    }

    private void tell(CrewCalendar crew, @Nullable WorkTask before, WorkTask task, boolean last, Visitor visitor) {
        int travel = before == null ? crew.toSite[task.site] : problem.travel()[before.site][task.site];
        visitor.stop(task, travel, task.setupAfter(before), last, last ? crew.fromSite[task.site] : 0);
    }

    private boolean sameDay(WorkTask one, WorkTask other) {
        return schedule.day[one.index] == schedule.day[other.index];
    }

    private List<WorkTask> inOrder(CrewCalendar crew, List<Unit> units) {
        List<WorkTask> tasks = new ArrayList<>();
        for (Unit unit : units)
            for (WorkTask task : unit.tasks) if (schedule.start[task.index] != TimeAxis.NEVER) tasks.add(task);
        if (crew.pinned.length > 0) {
            tasks.addAll(Arrays.asList(crew.pinned));
            tasks.sort(Comparator.comparingInt(task -> schedule.start[task.index]));
        }
        return tasks;
    }
}
