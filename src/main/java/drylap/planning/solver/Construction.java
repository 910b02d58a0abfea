package drylap.planning.solver;

import drylap.kernel.Task;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BooleanSupplier;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * Makes first crew lists: most urgent work first, each unit to the crew and the gap in its days where it costs least. Or, when
 * people have a plan already, as that plan has it.
 */
final class Construction {
    /** How often a plan is made anew, with earlier installs on the facades where the later trades had too few days. */
    private static final int ROUNDS = 12;

    private static final int EARLIER = 1440;

    private final Problem problem;
    private final Schedule scratch;
    private final boolean followPublished;
    private final boolean atOnce;
    private final int[] installBy;
    private final List<Timeline> lines;
    private final int[] notBefore;

    private Construction(Problem problem, boolean followPublished, int[] installBy) {
        this.problem = problem;
        this.followPublished = followPublished;
        this.installBy = installBy;
        atOnce = installBy.length == 0;
        scratch = new Schedule(problem);
        Finder finder = new Finder(problem.travel());
        lines = problem.crews().stream()
                .map(crew -> new Timeline(crew, scratch, finder))
                .toList();
        notBefore = new int[problem.units().size()];
    }

    /** A plan at once: the better of one from nothing and, where there is one, the published plan decoded again. */
    static CrewLists firstLists(Problem problem, Meter meter) {
        CrewLists cold = new Construction(problem, false, new int[0]).build(meter);
        if (problem.tasks().stream().noneMatch(WorkTask::published)) return cold;
        return better(new Construction(problem, true, new int[0]).build(meter), cold);
    }

    /** The better of the plan at hand and one that waits for dry hours as long as the later trades keep days enough. */
    static CrewLists drierLists(CrewLists first, BooleanSupplier stop) {
        CrewLists best = first;
        Problem problem = first.problem();
        int[] installBy = Deadlines.installBy(problem);
        for (int round = 0; round < ROUNDS && !stop.getAsBoolean(); round++) {
            CrewLists drier = new Construction(problem, false, installBy).build(first.meter);
            best = better(drier, best);
            if (!hurry(problem, drier.schedule(), installBy)) break;
        }
        return best;
    }

    /** Asks for earlier installs where something stayed out; false if nothing did. */
    private static boolean hurry(Problem problem, Schedule schedule, int[] installBy) {
        Set<FacadeWork> behind = problem.tasks().stream()
                .filter(task -> schedule.start[task.index] == TimeAxis.NEVER
                        && !problem.never().containsKey(task))
                .map(task -> task.course.facade)
                .collect(Collectors.toSet());
        for (FacadeWork facade : behind)
            for (CourseWork course : facade.courses)
                installBy[course.index] = Math.max(0, installBy[course.index] - EARLIER);
        return !behind.isEmpty();
    }

    private static CrewLists better(CrewLists one, CrewLists other) {
        return CrewLists.scoreOf(one.schedule().tally).compareTo(CrewLists.scoreOf(other.schedule().tally)) >= 0
                ? one
                : other;
    }

    private CrewLists build(Meter meter) {
        for (Task kind : Task.values()) {
            for (Unit unit : inOrder(kind)) add(unit);
            for (CourseWork course : problem.courses()) scratch.ends.recompute(course, kind, scratch.start);
        }
        List<Route> routes = new ArrayList<>();
        for (Timeline line : lines) routes.add(new Route(line.crew, line.units));
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

    /** Where a unit goes, and until when it waits there. */
    private record Place(Timeline line, int at, int notBefore, long cost) {}

    private void add(Unit unit) {
        Place best = null;
        for (Timeline line : lines) {
            if (!candidate(unit, line)) continue;
            best = followPublished || atOnce ? cheaper(best, unit, line, line.end(), 0) : dry(unit, line, best);
        }
        if (best == null) throw new IllegalStateException("no crew for " + unit);
        int wait = followPublished ? publishedDay(unit, best.line.crew) : best.notBefore;
        notBefore[unit.index] = wait;
        best.line.insert(unit, best.at, wait);
    }

    private @Nullable Place cheaper(@Nullable Place best, Unit unit, Timeline line, int at, int wait) {
        long cost = line.cost(unit, at, wait, atOnce ? 0 : lateFrom(unit));
        if (cost == Timeline.NO_PLACE || best != null && best.cost <= cost) return best;
        return new Place(line, at, wait, cost);
    }

    private int lateFrom(Unit unit) {
        return unit.kind == Task.INSTALL ? installBy[unit.course.index] : TimeAxis.NEVER;
    }

    /** The first gap, and for installs the starts and middles of later days, as far as delay alone does not cost more. */
    private @Nullable Place dry(Unit unit, Timeline line, @Nullable Place best) {
        int earliest = Math.max(0, scratch.readiness.earliest(unit.tasks[0]));
        Place found = best;
        if (earliest < TimeAxis.NEVER)
            for (int at = line.placeAt(earliest); at < line.end() && found == best; at++)
                found = cheaper(best, unit, line, at, 0);
        found = cheaper(found, unit, line, line.end(), 0);
        if (unit.kind != Task.INSTALL) return found;
        CrewCalendar crew = line.crew;
        for (int d = 0; d < crew.days(); d++) {
            if (crew.limit[d] < earliest) continue;
            if (found != null && Timeline.delay(crew.from[d], lateFrom(unit)) > found.cost) break;
            found = cheaper(found, unit, line, line.placeAt(crew.from[d]), Math.max(0, crew.from[d]));
            if (crew.breakUntil[d] > 0)
                found = cheaper(found, unit, line, line.placeAt(crew.breakUntil[d]), crew.breakUntil[d]);
        }
        return found;
    }

    private boolean candidate(Unit unit, Timeline line) {
        if (!unit.fits(line.crew)) return false;
        int published = unit.tasks[0].publishedCrew;
        return !followPublished
                || published < 0
                || published == line.crew.index
                || !unit.fits(lines.get(published).crew);
    }

    private static int publishedDay(Unit unit, CrewCalendar crew) {
        if (unit.tasks[0].publishedDate == null) return 0;
        int day = crew.dayOf(unit.tasks[0].publishedDate);
        return day < 0 ? 0 : Math.max(0, crew.from[day]);
    }
}
