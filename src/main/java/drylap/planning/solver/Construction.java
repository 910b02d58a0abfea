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
    private static final int LOST_PERCENT = 10;

    private final Problem problem;
    private final Schedule scratch;
    private final boolean followPublished;
    private final boolean atOnce;
    private final int[] installBy;
    private final int[] wrapBy;
    private final List<Timeline> lines;
    private final int[] notBefore;

    private Construction(Problem problem, boolean followPublished, int[] installBy) {
        this.problem = problem;
        this.followPublished = followPublished;
        this.installBy = installBy;
        wrapBy = Deadlines.wrapBy(problem);
        atOnce = installBy.length == 0;
        scratch = new Schedule(problem);
        Finder finder = new Finder(problem.travel());
        lines = problem.crews().stream()
                .map(crew -> new Timeline(crew, scratch, finder))
                .toList();
        notBefore = new int[problem.units().size()];
    }

    /** A plan at once: from nothing, or the published plan decoded again; the better one where the change costs it very much. */
    static Decoded firstLists(Problem problem, Meter meter) {
        if (problem.tasks().stream().noneMatch(WorkTask::published)) return cold(problem, meter);
        Decoded kept = kept(problem, Deadlines.installBy(problem), meter);
        if (!isMuch(kept.medium(), problem)) return kept;
        Decoded cold = cold(problem, meter);
        return isMuch(kept.medium() - cold.medium(), problem) ? kept.orBetter(cold) : kept;
    }

    private static Decoded cold(Problem problem, Meter meter) {
        return new Construction(problem, false, new int[0]).build(meter);
    }

    /** The better of the plan at hand and one that waits for dry hours as long as the later trades keep days enough. */
    static Decoded drierLists(Decoded first, BooleanSupplier stop) {
        Decoded best = first;
        Problem problem = first.lists().problem();
        int[] installBy = Deadlines.installBy(problem);
        for (int round = 0; round < ROUNDS && !stop.getAsBoolean(); round++) {
            Decoded drier = first.lists().fromPublished
                    ? kept(problem, installBy, first.lists().meter)
                    : new Construction(problem, false, installBy).build(first.lists().meter);
            best = drier.orBetter(best);
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

    private static Decoded kept(Problem problem, int[] installBy, Meter meter) {
        Decoded kept = new Construction(problem, true, installBy).build(meter);
        kept.lists().focus = Focus.of(kept);
        kept.lists().fromPublished = true;
        return kept;
    }

    /** A few tasks that a change threw out are soon put back; a plan that lost much is better made anew. */
    private static boolean isMuch(long medium, Problem problem) {
        return medium * 100 > (long) LOST_PERCENT * 1000 * problem.tasks().size();
    }

    private Decoded build(Meter meter) {
        for (Task kind : Task.values()) {
            List<Unit> units = inOrder(kind);
            if (followPublished)
                units = units.stream().filter(unit -> !kept(unit)).toList();
            for (Unit unit : units) add(unit);
            for (CourseWork course : problem.courses()) scratch.ends.recompute(course, kind, scratch.start);
        }
        List<Route> routes = new ArrayList<>();
        for (Timeline line : lines) routes.add(new Route(line.crew, line.units));
        return Decoded.of(new CrewLists(problem, routes, notBefore, meter));
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
        if (kind != Task.INSTALL)
            order = Comparator.comparingInt((Unit unit) -> wrapBy[unit.course.index])
                    .thenComparing(order);
        if (followPublished)
            order = Comparator.comparingInt((Unit unit) ->
                            unit.firstPublished() == null ? TimeAxis.NEVER : unit.firstPublished().publishedStart)
                    .thenComparing(order);
        return problem.units(kind).stream().sorted(order).toList();
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
            if (!unit.fits(line.crew)) continue;
            best = atOnce ? cheaper(best, unit, line, line.end(), 0) : dry(unit, line, best);
        }
        if (best == null) throw new IllegalStateException("no crew for " + unit);
        notBefore[unit.index] = best.notBefore;
        best.line.insert(unit, best.at, best.notBefore);
    }

    /** Puts a unit where the published plan has it, no earlier and on the same days, if weather and others let it. */
    private boolean kept(Unit unit) {
        WorkTask published = unit.firstPublished();
        if (published == null || !unit.fits(lines.get(published.publishedCrew).crew)) return false;
        Timeline line = lines.get(published.publishedCrew);
        int wait = Math.max(0, published.publishedStart);
        if (!line.keepsDays(unit, wait)) return false;
        notBefore[unit.index] = wait;
        line.insert(unit, line.end(), wait);
        return true;
    }

    private @Nullable Place waiting(@Nullable Place best, Unit unit, Timeline line, int moment) {
        return cheaper(best, unit, line, line.placeAt(moment), moment);
    }

    private @Nullable Place cheaper(@Nullable Place best, Unit unit, Timeline line, int at, int wait) {
        long cost = line.cost(unit, at, wait, atOnce ? 0 : lateFrom(unit));
        if (cost == Timeline.NO_PLACE || best != null && best.cost <= cost) return best;
        return new Place(line, at, wait, cost);
    }

    private int lateFrom(Unit unit) {
        return unit.kind == Task.INSTALL ? installBy[unit.course.index] : TimeAxis.NEVER;
    }

    /** The first gap, and for installs the starts, middles and driest moments of later days, as far as delay alone does not cost more. */
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
            found = waiting(found, unit, line, Math.max(0, crew.from[d]));
            if (crew.breakUntil[d] > 0) found = waiting(found, unit, line, crew.breakUntil[d]);
            found = waiting(found, unit, line, DryStart.of(unit, crew, d));
        }
        return found;
    }
}
