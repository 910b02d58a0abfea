package drylap.planning;

import java.time.Duration;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Picks which of a run's costs are kept: those that differ from the last, once the run is a twentieth older. A run of an hour
 * keeps at most some 200, most of them from its first minute, in which most is won.
 */
final class RunCurve {
    private static final int TWENTIETH = 20;

    private @Nullable RunPoint last;

    /** The point to keep, where there is one; before the first plan nothing has a cost. */
    Optional<RunPoint> next(PlanProgress progress) {
        boolean planned = progress.planned() + progress.unplanned() > 0;
        RunPoint point = RunPoint.of(progress);
        if (!planned || !due(point)) return Optional.empty();
        last = point;
        return Optional.of(point);
    }

    private boolean due(RunPoint point) {
        RunPoint before = last;
        if (before == null) return true;
        Duration from = before.at().plus(before.at().dividedBy(TWENTIETH));
        return !point.costsAs(before) && point.at().compareTo(from) > 0;
    }
}
