package drylap.planning.solver;

import static java.util.Objects.requireNonNull;

import drylap.planning.JobFolder;
import drylap.planning.Plan;
import drylap.planning.PlanRequest;
import java.time.Duration;
import java.util.Random;
import java.util.function.BooleanSupplier;
import org.jspecify.annotations.Nullable;
import org.optaplanner.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;
import org.optaplanner.core.api.solver.Solver;
import org.optaplanner.core.api.solver.SolverFactory;
import org.optaplanner.core.config.localsearch.LocalSearchPhaseConfig;
import org.optaplanner.core.config.phase.PhaseConfig;
import org.optaplanner.core.config.solver.EnvironmentMode;
import org.optaplanner.core.config.solver.SolverConfig;
import org.optaplanner.core.config.solver.termination.TerminationConfig;

/** The search for the plan of one region; a whole job that is not cut is one. */
final class RegionSearch {
    private static final Duration ASK_EVERY = Duration.ofMillis(50);

    /** Steps without a better plan after which a search is stuck, for any and for each unit. */
    private static final int STUCK_AFTER = 1000;

    private static final int STUCK_AFTER_EACH = 20;

    /** Up to so many units a search may wander widely and still come down often enough. */
    static final int SMALL = 60;

    private static final int WIDE = 400;

    private final Meter meter = new Meter();
    private final int tasks;
    private volatile CrewLists lists;
    private volatile HardMediumSoftLongScore score;
    private volatile int unplanned;

    private RegionSearch(CrewLists first) {
        lists = first;
        tasks = first.problem().tasks().size();
        score = HardMediumSoftLongScore.ZERO;
        note(first);
    }

    /** Compiles a region and makes its first plan. */
    static RegionSearch begin(JobFolder region, Span span) {
        Problem problem = ProblemCompiler.compile(region, span);
        Meter none = new Meter();
        RegionSearch search = new RegionSearch(Construction.firstLists(problem, none));
        search.lists.meter = search.meter;
        return search;
    }

    private void note(CrewLists now) {
        Schedule schedule = now.schedule();
        int out = 0;
        for (int start : schedule.start) if (start == TimeAxis.NEVER) out++;
        lists = now;
        unplanned = out;
        score = CrewLists.scoreOf(schedule.tally);
    }

    long moves() {
        return meter.moves();
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

    /** Searches until time or moves of the request end, or it is stopped; begins again near the best whenever it is stuck. */
    void search(PlanRequest request, BooleanSupplier stop) {
        if (units() == 0) return;
        long began = System.nanoTime();
        Random random = new Random(request.seed());
        CrewLists start = lists;
        for (int round = 0; !stop.getAsBoolean(); round++) {
            PlanRequest left = left(request, round, Duration.ofNanos(System.nanoTime() - began));
            if (left == null) return;
            CrewLists found = solve(start, left, stop);
            if (found.getScore().compareTo(score) >= 0) note(found);
            start = Kick.of(lists, random);
        }
    }

    /** What is left of the request for another round; null if that is nothing. */
    private @Nullable PlanRequest left(PlanRequest request, int round, Duration elapsed) {
        Duration time = request.time() == null ? null : request.time().minus(elapsed);
        Long moves = request.moves() == null ? null : request.moves() - meter.moves();
        if (time != null && !time.isPositive() || moves != null && moves <= 0) return null;
        return new PlanRequest(null, time, moves, request.seed() + round);
    }

    private CrewLists solve(CrewLists start, PlanRequest request, BooleanSupplier stop) {
        SolverConfig config = Search.config(request, request.time(), EnvironmentMode.REPRODUCIBLE);
        PhaseConfig<?> phase = requireNonNull(config.getPhaseConfigList()).getFirst();
        if (units() <= SMALL && phase instanceof LocalSearchPhaseConfig search)
            requireNonNull(search.getAcceptorConfig()).setLateAcceptanceSize(WIDE);
        phase.setTerminationConfig(
                new TerminationConfig().withUnimprovedStepCountLimit(STUCK_AFTER + STUCK_AFTER_EACH * units()));
        Solver<CrewLists> solver = SolverFactory.<CrewLists>create(config).buildSolver();
        Thread bell = Thread.ofVirtual().start(() -> terminateWhenAsked(solver, stop));
        try {
            solver.addEventListener(event -> better(event.getNewBestSolution()));
            return solver.solve(start);
        } finally {
            bell.interrupt();
        }
    }

    /** Costs are told at once; tasks are counted anew only when the medium cost has changed. */
    private void better(CrewLists now) {
        if (now.getScore().compareTo(score) <= 0) return; // a later round may begin with worse
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
