package drylap.planning.solver;

import drylap.planning.JobFolder;
import drylap.planning.Plan;
import drylap.planning.PlanRequest;
import java.time.Duration;
import java.util.List;
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

    RegionSearch(CrewLists first) {
        lists = first;
        tasks = first.problem().tasks().size();
        score = HardMediumSoftLongScore.ZERO;
        note(first);
    }

    /** Compiles a region and makes its first plan. */
    static RegionSearch begin(JobFolder region, Span span) {
        return new RegionSearch(Construction.firstLists(ProblemCompiler.compile(region, span), new Meter()));
    }

    private synchronized void note(CrewLists now) {
        Schedule schedule = now.schedule();
        int out = 0;
        for (int start : schedule.start) if (start == TimeAxis.NEVER) out++;
        lists = now;
        unplanned = out;
        score = CrewLists.scoreOf(schedule.tally);
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

    /** Better first plans than the one at once. */
    void improveFirst(BooleanSupplier stop) {
        note(Construction.drierLists(lists, stop));
    }

    /**
     * Searches until time or moves of the request end, or it is stopped: cools down thrice, from less and less heat, each time from
     * the best plan so far.
     *
     * @param lanes how many searches with seeds of their own share the moves, and the processors if there are enough
     */
    void search(PlanRequest request, BooleanSupplier stop, int lanes) {
        if (units() == 0) return;
        List<Meter> own = Stream.generate(Meter::new).limit(lanes).toList();
        meters.addAll(own);
        try (Crowd crowd = Crowd.of(lanes)) {
            for (Cooling cooling = Cooling.first(request, lists, own, crowd.width());
                    cooling != null && !stop.getAsBoolean();
                    cooling = cooling.next(lists)) {
                Cooling now = cooling;
                for (CrewLists found : crowd.each(own, meter -> solve(now, meter, stop)))
                    if (found.getScore().compareTo(score) >= 0) note(found);
            }
        }
    }

    private CrewLists solve(Cooling cooling, Meter meter, BooleanSupplier stop) {
        CrewLists start = new CrewLists.Cloner().cloneSolution(lists);
        start.meter = meter;
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
        if (now.getScore().mediumScore() != score.mediumScore()) note(now);
        else score = now.getScore();
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
