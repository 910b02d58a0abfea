package drylap.planning.solver;

import drylap.crews.Shift;
import drylap.planning.JobFolder;
import drylap.planning.Plan;
import drylap.planning.PlanRequest;
import drylap.planning.Waypoint;
import drylap.planning.solver.CrewShares.CrewDate;
import java.time.Duration;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.BooleanSupplier;
import java.util.stream.Stream;
import org.optaplanner.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;
import org.optaplanner.core.api.solver.Solver;
import org.optaplanner.core.api.solver.SolverFactory;

/** The search for the plan of one region; a whole job that is not cut is one. */
final class RegionSearch {
    private static final Duration ASK_EVERY = Duration.ofMillis(50);

    private final List<Meter> meters = new CopyOnWriteArrayList<>();
    private final int tasks;
    private volatile CrewLists lists;
    private volatile HardMediumSoftLongScore score;
    private volatile int unplanned;
    private volatile Best best;

    /** The best lists by now, which a search that goes on leaves as they are. */
    record Best(CrewLists lists, HardMediumSoftLongScore score) {}

    RegionSearch(Decoded first) {
        lists = first.lists();
        tasks = lists.problem().tasks().size();
        score = HardMediumSoftLongScore.ZERO;
        best = new Best(lists, score);
        note(first);
    }

    /** Compiles a region and makes its first plan. */
    static RegionSearch begin(JobFolder region, Span span) {
        return new RegionSearch(Construction.firstLists(ProblemCompiler.compile(region, span), new Meter()));
    }

    private synchronized void note(Decoded now) {
        int out = 0;
        for (int start : now.schedule().start) if (start == TimeAxis.NEVER) out++;
        lists = now.lists();
        unplanned = out;
        score = now.score();
        best = new Best(lists, score);
    }

    Best best() {
        return best;
    }

    /** Begins where an earlier search stood, unless the first plan is better. */
    void goOn(int region, Waypoint from) {
        note(Waypoints.goOn(Decoded.of(lists), region, from));
    }

    long moves() {
        return meters.stream().mapToLong(Meter::moves).sum();
    }

    long medium() {
        return -score.mediumScore();
    }

    long soft() {
        return -score.softScore();
    }

    int planned() {
        return tasks - unplanned;
    }

    int unplanned() {
        return unplanned;
    }

    /** Whether people have the plan already and nothing about it has changed. */
    boolean asPublished() {
        return lists.focus.isEmpty();
    }

    int units() {
        return lists.problem().units().size();
    }

    JobFolder folder() {
        return lists.problem().folder();
    }

    Span span() {
        return new Span(lists.problem().axis(), lists.problem().horizonEnd());
    }

    /** What has no place, by when it might begin. */
    List<Lack> lacks() {
        return medium() == 0 ? List.of() : Lack.of(lists);
    }

    /** Shifts with few tasks, and how many; a shift on which nothing is to be done has 0. */
    Map<Shift, Integer> light(int mostTasks) {
        Problem problem = lists.problem();
        Schedule schedule = lists.schedule();
        Map<CrewDate, Integer> load = new HashMap<>();
        for (WorkTask task : problem.tasks()) {
            if (schedule.start[task.index] == TimeAxis.NEVER) continue;
            CrewCalendar crew = problem.crews().get(schedule.crew[task.index]);
            load.merge(new CrewDate(crew.crew.id(), crew.dates[schedule.day[task.index]]), 1, Integer::sum);
        }
        Map<Shift, Integer> light = new LinkedHashMap<>();
        for (Shift shift : folder().shifts()) {
            int tasks = load.getOrDefault(new CrewDate(shift.crew(), shift.date()), 0);
            if (tasks <= mostTasks) light.put(shift, tasks);
        }
        return light;
    }

    /** Goes on with the same lists over more days of crews, and without some that were idle. */
    void change(JobFolder changed) {
        CrewLists same = lists.over(ProblemCompiler.compile(changed, span()));
        if (same != null) note(Decoded.of(same));
    }

    /** Better first plans than the one at once. */
    void improveFirst(BooleanSupplier stop) {
        note(Construction.drierLists(Decoded.of(lists), stop));
    }

    /**
     * Searches until time or moves of the request end, or it is stopped: cools down once. A few units cool more often, each time from the
     * first plan, since they do not come out again of where they have come to rest.
     *
     * @param lanes how many searches with seeds of their own share the moves, and the processors if there are enough
     */
    void search(PlanRequest request, BooleanSupplier stop, int lanes) {
        if (units() == 0) return;
        List<Meter> own = Stream.generate(Meter::new).limit(lanes).toList();
        meters.addAll(own);
        CrewLists first = lists;
        boolean isFew = Cooling.isFew(first.getUnits());
        first.hasty = lanes == 1 && !isFew;
        try (Crowd crowd = Crowd.of(lanes, request.processors())) {
            for (Cooling cooling = Cooling.first(request, lists, own, crowd.width());
                    cooling != null && !stop.getAsBoolean();
                    cooling = cooling.next(lists)) {
                Cooling now = cooling;
                for (CrewLists found : crowd.each(own, meter -> solve(now, meter, isFew ? first : lists, stop)))
                    if (found.getScore().compareTo(score) >= 0) note(Decoded.of(found));
            }
        }
    }

    private CrewLists solve(Cooling cooling, Meter meter, CrewLists from, BooleanSupplier stop) {
        CrewLists start = new CrewLists.Cloner().cloneSolution(from);
        start.meter = meter;
        boolean weighsOut = cooling.weighsOut(start.getUnits());
        if (weighsOut || !Cooling.isFew(start.getUnits()))
            return new Annealing(start, cooling.seed(meter), this::better, weighsOut)
                    .run(cooling.heat(), cooling.used(meter), stop);
        Solver<CrewLists> solver =
                SolverFactory.<CrewLists>create(cooling.config(meter)).buildSolver();
        Thread bell = Thread.ofVirtual().start(() -> terminateWhenAsked(solver, stop));
        try {
            solver.addEventListener(event -> better(event.getNewBestSolution()));
            return solver.solve(start);
        } finally {
            bell.interrupt();
        }
    }

    /** Costs are told at once; tasks are counted anew only when the medium cost has changed. */
    private synchronized void better(CrewLists now) {
        if (now.getScore().compareTo(score) <= 0) return; // another lane may have found better
        if (now.getScore().mediumScore() != score.mediumScore()) note(Decoded.of(now));
        else score = now.getScore();
        best = new Best(now, now.getScore());
    }

    private static void terminateWhenAsked(Solver<CrewLists> solver, BooleanSupplier stop) {
        try {
            while (!stop.getAsBoolean()) Thread.sleep(ASK_EVERY);
            while (!solver.isSolving()) Thread.sleep(ASK_EVERY);
            solver.terminateEarly();
        } catch (InterruptedException searchEnded) {
            Thread.currentThread().interrupt();
        }
    }

    Plan plan() {
        return new PlanMaker(lists).plan();
    }
}
