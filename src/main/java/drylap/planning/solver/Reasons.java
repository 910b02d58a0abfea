package drylap.planning.solver;

import drylap.kernel.Task;
import drylap.planning.UnplannedReason;
import drylap.planning.UnplannedTask;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Says of a task that stayed out of the plan what keeps it out. */
final class Reasons {
    private static final DateTimeFormatter WHEN = DateTimeFormatter.ofPattern("EEE d MMM HH:mm", Locale.ENGLISH);

    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("EEE d MMM", Locale.ENGLISH);

    private final Problem problem;
    private final Schedule schedule;
    private final Finder finder;

    Reasons(Problem problem, Schedule schedule) {
        this.problem = problem;
        this.schedule = schedule;
        finder = new Finder(problem.travel());
    }

    UnplannedTask of(WorkTask task) {
        if (problem.never().containsKey(task)) return say(task, UnplannedReason.NO_CREW_TRAINED, noCrew(task));
        int earliest = schedule.readiness.earliest(task);
        if (earliest == TimeAxis.NEVER) return say(task, UnplannedReason.WAITS_FOR_TASK, waitsFor(task));
        if (aCrewCould(task, earliest, schedule.readiness.latestEnd(task)))
            return say(
                    task,
                    UnplannedReason.HORIZON_FULL,
                    "every crew that could do it is taken until %s".formatted(when(task, problem.horizonEnd())));
        if (aCrewCould(task, earliest, TimeAxis.NEVER))
            return say(
                    task, UnplannedReason.APRON_LIMIT, "must end by " + when(task, schedule.readiness.latestEnd(task)));
        return noHour(task, earliest);
    }

    private UnplannedTask noHour(WorkTask task, int earliest) {
        boolean waitsForDelivery = task.kind == Task.INSTALL && earliest > 0 && aCrewCould(task, 0, task.latestEnd);
        if (waitsForDelivery)
            return say(
                    task,
                    UnplannedReason.NO_DELIVERY,
                    "delivered on %s, and no crew has open time after that before %s"
                            .formatted(DAY.format(task.opening.deliveredOn()), when(task, problem.horizonEnd())));
        return say(
                task,
                UnplannedReason.NO_DRY_WINDOW,
                "needs %d min in a row between %s and %s"
                        .formatted(task.minutes, when(task, Math.max(earliest, 0)), when(task, problem.horizonEnd())));
    }

    /** Whether some crew could do it if it had nothing else to do. */
    private boolean aCrewCould(WorkTask task, int earliest, int latestEnd) {
        return problem.crews(task.kind).stream()
                .filter(crew -> crew.crew.trainedFor(task.opening.method()))
                .anyMatch(crew -> finder.find(crew, 0, 0, null, task, earliest, latestEnd));
    }

    private static String noCrew(WorkTask task) {
        return task.kind == Task.INSTALL
                ? "no window crew is trained for method " + task.opening.method()
                : "there is no crew of the trade " + task.kind.trade().code();
    }

    private String waitsFor(WorkTask task) {
        return firstMissing(task)
                .map(other ->
                        "waits for the %s of %s, which is not planned".formatted(other.kind.code(), other.opening.id()))
                .orElse("crews wait for each other in a ring");
    }

    private Optional<WorkTask> firstMissing(WorkTask task) {
        if (task.kind == Task.TEST) return Optional.ofNullable(task.install);
        Optional<WorkTask> own = missing(task.course, List.of(Task.INSTALL, Task.TEST));
        if (own.isEmpty() && task.kind == Task.CLAD) own = missing(task.course, List.of(Task.WRAP));
        CourseWork below = problem.below(task.course, task.kind);
        return own.isPresent() || below == null ? own : missing(below, List.of(task.kind));
    }

    private Optional<WorkTask> missing(CourseWork course, List<Task> kinds) {
        return kinds.stream()
                .flatMap(kind -> course.tasks(kind).stream())
                .filter(other -> schedule.start[other.index] == TimeAxis.NEVER)
                .findFirst();
    }

    private String when(WorkTask task, int minute) {
        ZoneId zone = problem.sites().get(task.site).zone();
        return WHEN.format(problem.axis().at(minute).atZone(zone));
    }

    private static UnplannedTask say(WorkTask task, UnplannedReason reason, String detail) {
        return new UnplannedTask(task.opening.id(), task.kind, reason, detail);
    }
}
