package drylap.bench;

import com.google.ortools.Loader;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import drylap.bench.ExactJob.Work;
import drylap.planning.JobFolder;
import drylap.planning.Visit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Solves an {@link ExactModel} and turns what comes out into visits. */
final class ExactSolver {
    private static final int WORKERS = 2;

    /** @param bound no plan costs less */
    record Result(List<Visit> visits, long cost, long bound, boolean proved) {}

    static {
        Loader.loadNativeLibraries();
    }

    private ExactSolver() {}

    static ExactModel model(JobFolder folder) {
        return new ExactModel(new ExactJob(folder));
    }

    /** The best plan that is found in the time; nothing if none is. */
    static Optional<Result> solve(JobFolder folder, double seconds) {
        return solve(model(folder), seconds);
    }

    /** What the model says that a plan costs; nothing if it says that the plan is not legal. */
    static Optional<Long> price(JobFolder folder, List<Visit> plan) {
        ExactModel exact = model(folder);
        exact.only(plan);
        return solve(exact, 60).filter(Result::proved).map(Result::cost);
    }

    static Optional<Result> solve(ExactModel exact, double seconds) {
        CpSolver solver = new CpSolver();
        solver.getParameters().setMaxTimeInSeconds(seconds).setNumWorkers(WORKERS);
        CpSolverStatus status = solver.solve(exact.model);
        if (status != CpSolverStatus.OPTIMAL && status != CpSolverStatus.FEASIBLE) return Optional.empty();
        return Optional.of(new Result(
                visits(exact, solver),
                Math.round(solver.objectiveValue()),
                (long) Math.ceil(solver.bestObjectiveBound() - 1e-6),
                status == CpSolverStatus.OPTIMAL));
    }

    private static List<Visit> visits(ExactModel exact, CpSolver solver) {
        List<Work> inTime = exact.job.works.stream()
                .sorted(Comparator.comparingLong(work -> solver.value(exact.starts.get(work.index()))))
                .toList();
        Map<ExactJob.Day, Integer> sequences = new HashMap<>();
        List<Visit> visits = new ArrayList<>();
        for (Work work : inTime)
            exact.places.get(work.index()).forEach((day, here) -> {
                if (!solver.booleanValue(here)) return;
                long start = solver.value(exact.starts.get(work.index()));
                visits.add(new Visit(
                        day.crew().id(),
                        day.shift().date(),
                        sequences.merge(day, 1, Integer::sum),
                        work.opening().facade(),
                        work.opening().level(),
                        work.opening().id(),
                        work.task(),
                        exact.job.at(start),
                        exact.job.at(start + work.minutes())));
            });
        visits.sort(Comparator.comparing(Visit::crew).thenComparing(Visit::start));
        return visits;
    }
}
