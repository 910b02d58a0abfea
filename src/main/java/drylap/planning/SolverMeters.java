package drylap.planning;

import io.micrometer.core.instrument.Gauge;
import io.micrometer.core.instrument.MeterRegistry;
import org.springframework.stereotype.Component;

/** What the search comes to on this node: runs that ended, moves tried, how fast, and at what cost the last one ended. */
@Component
final class SolverMeters {
    private static final double MS = 1_000;

    private final MeterRegistry meters;
    private volatile double movesPerSecond = Double.NaN;
    private volatile double medium = Double.NaN;
    private volatile double soft = Double.NaN;
    private volatile double unplanned = Double.NaN;

    SolverMeters(MeterRegistry meters) {
        this.meters = meters;
        Gauge.builder("drylap.solver.moves.per.second", this, now -> now.movesPerSecond)
                .description("of the last run that ended here, all nodes that had it together")
                .register(meters);
        Gauge.builder("drylap.solver.last.cost", this, now -> now.medium)
                .tag("level", "medium")
                .register(meters);
        Gauge.builder("drylap.solver.last.cost", this, now -> now.soft)
                .tag("level", "soft")
                .register(meters);
        Gauge.builder("drylap.solver.last.unplanned", this, now -> now.unplanned)
                .description("tasks that the last run left out")
                .register(meters);
    }

    /** @param moves of the run that were tried on this node */
    void ended(PlanProgress end, long moves) {
        meters.counter("drylap.solver.runs").increment();
        meters.counter("drylap.solver.moves").increment(moves);
        double seconds = end.elapsed().toMillis() / MS;
        movesPerSecond = seconds == 0 ? Double.NaN : end.moves() / seconds;
        medium = end.medium();
        soft = end.soft();
        unplanned = end.unplanned();
    }
}
