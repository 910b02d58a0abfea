package drylap.planning.solver;

import drylap.planning.PlanRequest;
import java.time.Duration;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What each region gets of the time and the moves that are left, by the units that it has. */
record Shares(@Nullable Duration time, @Nullable Long moves, long seed, long units, int atOnce) {
    Shares(PlanRequest request, Duration elapsed, List<RegionSearch> searches, int atOnce) {
        this(
                request.time() == null ? null : request.time().minus(elapsed),
                request.moves(),
                request.seed(),
                searches.stream().mapToLong(RegionSearch::units).sum(),
                Math.min(atOnce, searches.size()));
    }

    PlanRequest of(RegionSearch search) {
        double share = (double) search.units() / Math.max(1, units);
        return new PlanRequest(null, timeOf(share), movesOf(share), seed);
    }

    private @Nullable Duration timeOf(double share) {
        if (time == null) return null;
        long whole = Math.max(1, time.toMillis());
        return Duration.ofMillis(Math.clamp(Math.round(whole * share * atOnce), 1, whole));
    }

    private @Nullable Long movesOf(double share) {
        return moves == null ? null : Math.max(1, Math.round(moves * share));
    }
}
