package drylap.forecasts;

import java.time.Instant;

/**
 * The chance of rain, 0 to 1, at any time in several hours, told beside the chances of the hours themselves.
 *
 * @param from the start of its first hour
 */
public record PeriodChance(Instant from, int hours, double chance) {
    public PeriodChance {
        if (hours < 2) throw new IllegalArgumentException("a period of %d hours is none".formatted(hours));
        if (!(chance >= 0 && chance <= 1))
            throw new IllegalArgumentException("a chance of %s is outside 0..1".formatted(chance));
    }
}
