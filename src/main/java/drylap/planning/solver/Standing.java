package drylap.planning.solver;

import drylap.kernel.CrewId;
import drylap.kernel.OpeningId;
import drylap.kernel.Task;
import drylap.planning.JobFolder;
import drylap.planning.Plan;
import drylap.planning.TaskWords;
import drylap.planning.Visit;
import drylap.speech.Part;
import drylap.speech.Saying;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/** A plan laid over its compiled folder: where each task stands, and what must come before it. */
final class Standing {
    private record Key(OpeningId opening, Task task) {}

    final Problem problem;
    final CourseEnds ends;
    final Readiness readiness;
    final Finder finder;
    /** By task: start (NEVER: not in the plan), crew and the crew's day. */
    final int[] start;

    final int[] crew;
    final int[] day;
    private final Map<Key, WorkTask> tasks = new HashMap<>();

    private Standing(JobFolder folder, Plan plan) {
        problem = Problem.of(folder, plan.start());
        int size = problem.tasks().size();
        start = new int[size];
        crew = new int[size];
        day = new int[size];
        Arrays.fill(start, TimeAxis.NEVER);
        Arrays.fill(crew, -1);
        for (WorkTask task : problem.tasks()) tasks.put(new Key(task.opening.id(), task.kind), task);
        plan.visits().forEach(this::put);
        ends = new CourseEnds(problem.courses().size(), new Journal());
        for (CourseWork course : problem.courses()) for (Task kind : Task.values()) ends.recompute(course, kind, start);
        readiness = new Readiness(problem, ends, start);
        finder = new Finder(problem.travel());
    }

    static Standing of(JobFolder folder, Plan plan) {
        return new Standing(folder, plan);
    }

    private void put(Visit visit) {
        WorkTask task = tasks.get(new Key(visit.opening(), visit.task()));
        CrewCalendar by = crew(visit.crew()).orElse(null);
        if (task == null || by == null || by.dayOf(visit.date()) < 0) return;
        start[task.index] = problem.axis().floor(visit.start());
        crew[task.index] = by.index;
        day[task.index] = by.dayOf(visit.date());
    }

    private Optional<CrewCalendar> crew(CrewId id) {
        return problem.crews().stream().filter(one -> one.crew.id().equals(id)).findFirst();
    }

    Optional<WorkTask> task(OpeningId opening, Task kind) {
        return Optional.ofNullable(tasks.get(new Key(opening, kind)));
    }

    Optional<WorkTask> planned(OpeningId opening, Task kind) {
        return task(opening, kind).filter(task -> start[task.index] != TimeAxis.NEVER);
    }

    CrewCalendar crewOf(WorkTask task) {
        return problem.crews().get(crew[task.index]);
    }

    int end(WorkTask task) {
        return start[task.index] + task.minutes;
    }

    /** A crew's tasks by start. */
    List<WorkTask> of(CrewCalendar by) {
        return problem.tasks().stream()
                .filter(task -> crew[task.index] == by.index)
                .sorted(Comparator.comparingInt((WorkTask task) -> start[task.index])
                        .thenComparingInt(task -> task.index))
                .toList();
    }

    /** The crew's stop before a task, of whatever day. */
    @Nullable
    WorkTask before(WorkTask task) {
        List<WorkTask> all = of(crewOf(task));
        int at = all.indexOf(task);
        return at == 0 ? null : all.get(at - 1);
    }

    @Nullable
    WorkTask after(WorkTask task) {
        List<WorkTask> all = of(crewOf(task));
        int at = all.indexOf(task);
        return at == all.size() - 1 ? null : all.get(at + 1);
    }

    /** The crews that could do a task. */
    List<CrewCalendar> able(WorkTask task) {
        return problem.crews(task.kind).stream()
                .filter(one -> one.crew.trainedFor(task.opening.method()))
                .toList();
    }

    /** Legal starts on one day of a crew as the rest of the plan stands, earliest first: before, between and after its stops. */
    List<Integer> places(WorkTask task, CrewCalendar by, int onDay, int notBefore) {
        int earliest = Math.max(readiness.earliest(task), notBefore);
        if (earliest >= TimeAxis.NEVER) return List.of();
        List<WorkTask> stops = of(by).stream()
                .filter(other -> other != task && day[other.index] == onDay)
                .toList();
        return IntStream.rangeClosed(0, stops.size())
                .map(place -> startAfter(place == 0 ? null : stops.get(place - 1), task, by, onDay, earliest))
                .filter(at -> at != TimeAxis.NEVER)
                .distinct()
                .sorted()
                .boxed()
                .toList();
    }

    private int startAfter(@Nullable WorkTask stop, WorkTask task, CrewCalendar by, int onDay, int earliest) {
        int clock = stop == null ? 0 : end(stop);
        boolean found = finder.find(by, onDay, clock, stop, task, earliest, readiness.latestEnd(task));
        return found && finder.day == onDay ? finder.start : TimeAxis.NEVER;
    }

    Part when(WorkTask task, int minute) {
        ZoneId zone = problem.sites().get(task.site).zone();
        return new Part.When(problem.axis().at(minute).atZone(zone));
    }

    static Saying name(WorkTask task) {
        return TaskWords.the(task.kind, task.opening.id());
    }

    static Saying wall(WorkTask task) {
        return Saying.of("wall {0}", task.opening.facade().facade());
    }
}
