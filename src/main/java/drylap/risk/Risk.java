package drylap.risk;

import drylap.planning.JobFolder;
import drylap.planning.Plan;
import java.time.Instant;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.ForkJoinPool;
import java.util.function.BooleanSupplier;
import java.util.function.IntConsumer;

/** Replays a plan under many drawn weathers, durations and deliveries. */
public final class Risk {
    private Risk() {}

    /** On all processors, without being watched or stopped. */
    public static RiskReport of(JobFolder folder, Plan plan, RiskRequest request) {
        return of(folder, plan, request, _ -> {}, () -> false).orElseThrow();
    }

    /**
     * The same seed and number of trials give the same report on any number of processors.
     *
     * @param progress told how many trials are done, from any thread
     * @return nothing where it was halted
     */
    public static Optional<RiskReport> of(
            JobFolder folder, Plan plan, RiskRequest request, IntConsumer progress, BooleanSupplier halted) {
        return of(folder, plan, request, progress, halted, ForkJoinPool.commonPool());
    }

    static Optional<RiskReport> of(
            JobFolder folder,
            Plan plan,
            RiskRequest request,
            IntConsumer progress,
            BooleanSupplier halted,
            ForkJoinPool pool) {
        Instant from = Objects.requireNonNullElse(request.from(), plan.start());
        JobBook book = new JobBook(folder, plan.visits(), from, request.normals());
        return new Trials(book, pool)
                .run(request.trials(), request.seed(), progress, halted)
                .map(runs -> new Reporting(book, runs).report(request.seed()));
    }
}
