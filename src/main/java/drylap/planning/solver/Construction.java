package drylap.planning.solver;

import drylap.kernel.Task;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Makes first crew lists: most urgent work first, each unit to the crew that is through with it earliest, a little in favour
 * of short ways and days that are begun already. Or, when people have a plan already, as that plan has it.
 */
final class Construction {
    private static final int NEW_DAY_MIN = 60;

    private final Problem problem;
    private final Schedule scratch;
    private final Finder finder;
    private final boolean followPublished;
    private final List<CrewState> states;
    private final List<List<Unit>> lists;
    private final int[] notBefore;

    private Construction(Problem problem, boolean followPublished) {
        this.problem = problem;
        this.followPublished = followPublished;
        scratch = new Schedule(problem);
        finder = new Finder(problem.travel());
        states = problem.crews().stream().map(CrewState::new).toList();
        lists = new ArrayList<>();
        for (int crew = 0; crew < states.size(); crew++) lists.add(new ArrayList<>());
        notBefore = new int[problem.units().size()];
    }

    /** The better of a plan from nothing and, where there is one, the published plan decoded again. */
    static CrewLists firstLists(Problem problem, Meter meter) {
        CrewLists cold = new Construction(problem, false).build(meter);
        if (problem.tasks().stream().noneMatch(WorkTask::published)) return cold;
        CrewLists kept = new Construction(problem, true).build(meter);
        return CrewLists.scoreOf(kept.schedule().tally).compareTo(CrewLists.scoreOf(cold.schedule().tally)) >= 0
                ? kept
                : cold;
    }

    private CrewLists build(Meter meter) {
        for (Task kind : Task.values()) {
            for (Unit unit : inOrder(kind)) append(unit);
            for (CourseWork course : problem.courses()) scratch.ends.recompute(course, kind, scratch.start);
        }
        List<Route> routes = new ArrayList<>();
        for (CrewState state : states) routes.add(new Route(state.crew, lists.get(state.crew.index)));
        return new CrewLists(problem, routes, notBefore, meter);
    }

    /** Courses are ready no earlier than those below them, so sorting by readiness keeps the order of laps. */
    private List<Unit> inOrder(Task kind) {
        Map<CourseWork, Integer> ready = new HashMap<>();
        for (CourseWork course : problem.courses()) ready.put(course, readiness(course, kind, ready));
        Comparator<Unit> order = Comparator.comparingInt((Unit unit) -> unit.tasks[0].coverBy)
                .thenComparingInt(unit -> -unit.tasks[0].opening.priority())
                .thenComparingInt(unit -> kind == Task.INSTALL ? unit.course.facade.due : 0)
                .thenComparingInt(unit -> ready.getOrDefault(unit.course, 0))
                .thenComparingInt(unit -> unit.course.course.level())
                .thenComparingInt(unit -> unit.index);
        if (kind == Task.WRAP || kind == Task.CLAD)
            order = Comparator.comparingInt((Unit unit) -> ready.getOrDefault(unit.course, 0))
                    .thenComparingInt(unit -> unit.course.course.level())
                    .thenComparingInt(unit -> unit.course.facade.due)
                    .thenComparingInt(unit -> unit.index);
        if (followPublished)
            order = Comparator.comparing(Construction::publishedOn, Comparator.nullsLast(Comparator.naturalOrder()))
                    .thenComparing(order);
        return problem.units(kind).stream().sorted(order).toList();
    }

    private static java.time.@Nullable LocalDate publishedOn(Unit unit) {
        return unit.tasks[0].publishedDate;
    }

    private int readiness(CourseWork course, Task kind, Map<CourseWork, Integer> ready) {
        if (kind == Task.INSTALL) return 0;
        if (kind == Task.TEST) return scratch.ends.through(course, Task.INSTALL);
        CourseWork below = problem.below(course, kind);
        int own = course.tasks(kind).isEmpty()
                ? 0
                : scratch.readiness.earliest(course.tasks(kind).getFirst());
        return Math.max(own == TimeAxis.NEVER ? 0 : own, below == null ? 0 : ready.getOrDefault(below, 0));
    }

    private void append(Unit unit) {
        CrewState best = null;
        long leastCost = Long.MAX_VALUE;
        for (CrewState state : states) {
            if (!candidate(unit, state)) continue;
            long cost = cost(unit, state);
            if (best == null || cost < leastCost) {
                best = state;
                leastCost = cost;
            }
        }
        if (best == null) throw new IllegalStateException("no crew for " + unit);
        lists.get(best.crew.index).add(unit);
        if (followPublished) notBefore[unit.index] = publishedDay(unit, best.crew);
        settle(unit, best);
    }

    private boolean candidate(Unit unit, CrewState state) {
        if (!unit.fits(state.crew)) return false;
        int published = unit.tasks[0].publishedCrew;
        return !followPublished
                || published < 0
                || published == state.crew.index
                || !unit.fits(states.get(published).crew);
    }

    private static int publishedDay(Unit unit, CrewCalendar crew) {
        if (unit.tasks[0].publishedDate == null) return 0;
        int day = crew.dayOf(unit.tasks[0].publishedDate);
        return day < 0 ? 0 : Math.max(0, crew.from[day]);
    }

    /** Minutes until the crew is through with the unit, and what it costs to get there; tasks without a start weigh most. */
    private long cost(Unit unit, CrewState state) {
        int day = state.day;
        int clock = state.clock;
        WorkTask before = state.before;
        long cost = 0;
        for (WorkTask task : unit.tasks) {
            if (!find(state.crew, day, clock, before, task, 0)) {
                cost += TimeAxis.NEVER;
                continue;
            }
            if (before == null || finder.day != day) cost += NEW_DAY_MIN;
            else cost += (problem.travel()[before.site][task.site] + task.setupAfter(before)) / 2;
            day = finder.day;
            clock = finder.start + task.minutes;
            before = task;
        }
        return cost + clock;
    }

    private boolean find(
            CrewCalendar crew, int day, int clock, @Nullable WorkTask before, WorkTask task, int notBefore) {
        int earliest = scratch.readiness.earliest(task);
        return earliest != TimeAxis.NEVER
                && finder.find(
                        crew,
                        day,
                        clock,
                        before,
                        task,
                        Math.max(earliest, notBefore),
                        scratch.readiness.latestEnd(task));
    }

    private void settle(Unit unit, CrewState state) {
        for (WorkTask task : unit.tasks) {
            if (!find(state.crew, state.day, state.clock, state.before, task, notBefore[unit.index])) continue;
            scratch.start[task.index] = finder.start;
            state.day = finder.day;
            state.clock = finder.start + task.minutes;
            state.before = task;
        }
        scratch.ends.recompute(unit.course, unit.kind, scratch.start);
    }
}
