package drylap.planning.solver;

import drylap.kernel.Task;
import drylap.planning.LeftOut;
import drylap.planning.UnplannedReason;
import drylap.planning.UnplannedTask;
import drylap.speech.Part;
import java.util.List;
import java.util.Optional;

/** Says of a task that stayed out of the plan what keeps it out. */
final class Reasons {
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
            return say(task, UnplannedReason.HORIZON_FULL, LeftOut.CREWS_TAKEN.with(when(task, problem.horizonEnd())));
        if (aCrewCould(task, earliest, TimeAxis.NEVER))
            return say(
                    task,
                    UnplannedReason.APRON_LIMIT,
                    LeftOut.MUST_END.with(when(task, schedule.readiness.latestEnd(task))));
        return noHour(task, earliest);
    }

    private UnplannedTask noHour(WorkTask task, int earliest) {
        boolean waitsForDelivery = task.kind == Task.INSTALL && earliest > 0 && aCrewCould(task, 0, task.latestEnd);
        if (waitsForDelivery)
            return say(
                    task,
                    UnplannedReason.NO_DELIVERY,
                    LeftOut.COMES_LATE.with(
                            new Part.When(task.opening.deliveredOn()), when(task, problem.horizonEnd())));
        return say(
                task,
                UnplannedReason.NO_DRY_WINDOW,
                LeftOut.NO_HOUR.with(
                        task.minutes, when(task, Math.max(earliest, 0)), when(task, problem.horizonEnd())));
    }

    /** Whether some crew could do it if it had nothing else to do. */
    private boolean aCrewCould(WorkTask task, int earliest, int latestEnd) {
        return problem.crews(task.kind).stream()
                .filter(crew -> crew.crew.trainedFor(task.opening.method()))
                .anyMatch(crew -> finder.find(crew, 0, 0, null, task, earliest, latestEnd));
    }

    private static String noCrew(WorkTask task) {
        return task.kind == Task.INSTALL
                ? LeftOut.NO_METHOD.with(task.opening.method())
                : LeftOut.NO_TRADE.with(task.kind.trade().code());
    }

    private String waitsFor(WorkTask task) {
        return firstMissing(task)
                .map(other -> waitsFor(other.kind).with(other.opening.id()))
                .orElseGet(LeftOut.RING::with);
    }

    private static LeftOut waitsFor(Task kind) {
        return switch (kind) {
            case INSTALL -> LeftOut.WAITS_FOR_INSTALL;
            case TEST -> LeftOut.WAITS_FOR_TEST;
            case WRAP -> LeftOut.WAITS_FOR_WRAP;
            case CLAD -> LeftOut.WAITS_FOR_CLAD;
        };
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

    private Part when(WorkTask task, int minute) {
        return new Part.When(
                problem.axis().at(minute).atZone(problem.sites().get(task.site).zone()));
    }

    private static UnplannedTask say(WorkTask task, UnplannedReason reason, String detail) {
        return new UnplannedTask(task.opening.id(), task.kind, reason, detail);
    }
}
