package drylap.risk;

import drylap.climate.MinuteAxis;
import java.time.Duration;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * A moment that is not passed in some share of the trials.
 *
 * @param at none where so many trials did not get through within the weeks that are looked at
 * @param error how far off it may be by chance: half of what lies between the moments one standard error of the share lower and
 *     higher
 */
public record DateFigure(@Nullable Instant at, @Nullable Duration error) {
    /** Of ends in order, NEVER for what had none. */
    static DateFigure of(int[] sorted, double share, MinuteAxis axis) {
        double error = Math.sqrt(share * (1 - share) / sorted.length);
        int at = rank(sorted, share);
        int low = rank(sorted, share - error);
        int high = rank(sorted, share + error);
        if (at >= MinuteAxis.NEVER) return new DateFigure(null, null);
        return new DateFigure(
                axis.at(at), high >= MinuteAxis.NEVER ? null : Duration.ofSeconds((high - (long) low) * 60 / 2));
    }

    /** The least value that the share of all values does not exceed. */
    private static int rank(int[] sorted, double share) {
        int place = (int) Math.ceil(share * sorted.length) - 1;
        return sorted[Math.clamp(place, 0, sorted.length - 1)];
    }
}
