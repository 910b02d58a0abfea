package drylap.planning.solver;

import drylap.planning.PlanRequest;
import java.time.Duration;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What each region gets of the time and the moves that are left, by the units that it has.
 *
 * @param part of its share, for a search that is not the last
 */
record Shares(
        @Nullable Duration time, @Nullable Long moves, long seed, int processors, long units, int atOnce, double part) {
    Shares(PlanRequest request, Report report, List<RegionSearch> searches, int atOnce) {
        this(
                request.time() == null ? null : request.time().minus(report.elapsed()),
                request.moves() == null ? null : request.moves() - moves(searches),
                request.seed(),
                request.processors(),
                searches.stream().mapToLong(RegionSearch::units).sum(),
                Math.min(atOnce, searches.size()),
                1);
    }

    private static long moves(List<RegionSearch> searches) {
        return searches.stream().mapToLong(RegionSearch::moves).sum();
    }

    /** A part of them, with other draws in each round, so that what had no place is not tried the same way again. */
    Shares ofRound(int round, double factor) {
        return new Shares(time, moves, seed + round, processors, units, atOnce, part * factor);
    }

    PlanRequest of(RegionSearch search) {
        double share = part * search.units() / Math.max(1, units);
        return new PlanRequest(null, timeOf(share), movesOf(share), seed, processors);
    }

    private @Nullable Duration timeOf(double share) {
        if (time == null) return null;
        long whole = Math.max(1, time.toMillis());
        return Duration.ofMillis(Math.clamp(Math.round(whole * share * atOnce), 1, whole));
    }

    private @Nullable Long movesOf(double share) {
        return moves == null ? null : Math.clamp(Math.round(moves * share), 1, Math.max(1, moves));
    }
}
