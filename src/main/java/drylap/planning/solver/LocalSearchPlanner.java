package drylap.planning.solver;

import drylap.planning.JobFolder;
import drylap.planning.Plan;
import drylap.planning.PlanProgress;
import drylap.planning.PlanRequest;
import drylap.planning.Planner;
import java.time.Duration;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import org.optaplanner.core.api.solver.Solver;
import org.optaplanner.core.api.solver.SolverFactory;
import org.optaplanner.core.config.solver.EnvironmentMode;

/** A legal plan at once by construction, then better ones by local search until time, moves or patience end. */
public final class LocalSearchPlanner implements Planner {
    private static final Duration ASK_EVERY = Duration.ofMillis(50);

    @Override
    public Plan plan(JobFolder folder, PlanRequest request, Consumer<PlanProgress> watcher, BooleanSupplier stop) {
        long began = System.nanoTime();
        Meter meter = new Meter();
        Problem problem = Problem.of(folder, request.now());
        CrewLists lists = Construction.firstLists(problem, meter);
        Report report = new Report(began, meter, watcher);
        report.tell(lists.schedule());
        if (worthSearching(problem, request, stop)) lists = search(lists, request, report, stop);
        return new PlanMaker(lists).plan();
    }

    private static boolean worthSearching(Problem problem, PlanRequest request, BooleanSupplier stop) {
        boolean noTime = request.time() != null && request.time().isZero();
        boolean noMoves = request.moves() != null && request.moves() == 0;
        return !problem.units().isEmpty() && !noTime && !noMoves && !stop.getAsBoolean();
    }

    private static CrewLists search(CrewLists first, PlanRequest request, Report report, BooleanSupplier stop) {
        Duration left = request.time() == null ? null : request.time().minus(report.elapsed());
        Solver<CrewLists> solver = SolverFactory.<CrewLists>create(
                        Search.config(request, left, EnvironmentMode.REPRODUCIBLE))
                .buildSolver();
        Thread bell = Thread.ofVirtual().start(() -> terminateWhenAsked(solver, report, stop));
        try {
            solver.addEventListener(event -> report.better(event.getNewBestSolution()));
            return solver.solve(first);
        } finally {
            bell.interrupt();
        }
    }

    private static void terminateWhenAsked(Solver<CrewLists> solver, Report report, BooleanSupplier stop) {
        try {
            while (!stop.getAsBoolean()) {
                Thread.sleep(ASK_EVERY);
                report.tick();
            }
            while (!solver.isSolving()) Thread.sleep(ASK_EVERY);
            solver.terminateEarly();
        } catch (InterruptedException searchEnded) {
            Thread.currentThread().interrupt();
        }
    }
}
