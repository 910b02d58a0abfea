package drylap.planning.solver;

import drylap.kernel.Task;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Writes a schedule down as stops. */
final class Stops {
    private final Problem problem;
    private final Schedule schedule;
    private final Stop.@Nullable When[] when;
    private int free;

    private Stops(Schedule schedule, Problem problem) {
        this.problem = problem;
        this.schedule = schedule;
        when = new Stop.When[problem.tasks().size()];
    }

    static List<Stop> of(Schedule schedule) {
        return new Stops(schedule, schedule.problem()).all();
    }

    private List<Stop> all() {
        CrewWalk walk = new CrewWalk(problem, schedule);
        for (CrewCalendar crew : problem.crews()) {
            free = -1;
            walk.walk(
                    crew,
                    schedule.units(crew),
                    (task, travel, setup, last, back) ->
                            when[task.index] = when(crew, task, travel, setup, last, back));
        }
        List<Stop> stops = new ArrayList<>();
        for (WorkTask task : problem.tasks()) stops.add(new Stop(what(task), when[task.index]));
        return stops;
    }

    private Stop.When when(CrewCalendar crew, WorkTask task, int travel, int setup, boolean last, int back) {
        int start = schedule.start[task.index];
        int day = schedule.day[task.index];
        int from = free < 0 ? crew.from[day] : free;
        free = last ? -1 : start + task.minutes;
        return new Stop.When(
                crew.index,
                crew.dates[day],
                start,
                from,
                travel,
                setup,
                last,
                back,
                new Stop.Shift(crew.end[day], crew.limit[day], crew.breakFrom[day], crew.breakUntil[day]),
                crew.crew.trade() == task.kind.trade() && crew.crew.trainedFor(task.opening.method()),
                task.open.open(start, start + task.minutes),
                task.kind == Task.INSTALL ? task.odds.thousandths(start, start + task.minutes) : 0);
    }

    private Stop.What what(WorkTask task) {
        CourseWork below = problem.below(task.course, task.kind);
        return new Stop.What(
                task.opening.id(),
                task.kind,
                task.opening.facade(),
                task.opening.level(),
                below == null ? 0 : below.course.level(),
                task.minutes,
                task.opening.priority(),
                task.opening.method().barrierFirst(),
                task.course.facade.due,
                problem.horizonEnd(),
                task.kind == Task.INSTALL || task.kind == Task.TEST ? task.earliest : task.course.lastInstalledEnd,
                task.kind == Task.WRAP ? problem.wrapBy(task) : TimeAxis.NEVER,
                task.coverBy,
                problem.limits(task),
                before(task));
    }

    private static Stop.@Nullable Before before(WorkTask task) {
        return task.publishedDate == null
                ? null
                : new Stop.Before(task.publishedCrew, task.publishedDate, task.pinned, task.pinnedStart);
    }
}
