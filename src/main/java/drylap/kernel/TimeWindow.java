package drylap.kernel;

import java.time.Duration;
import java.time.Instant;

/** A half-open stretch of time: {@code from} is in it, {@code until} is not. */
public record TimeWindow(Instant from, Instant until) {
    public TimeWindow {
        if (!from.isBefore(until))
            throw new IllegalArgumentException("a window from %s until %s is empty".formatted(from, until));
    }

    public boolean contains(Instant instant) {
        return !instant.isBefore(from) && instant.isBefore(until);
    }

    public boolean overlaps(TimeWindow other) {
        return from.isBefore(other.until) && other.from.isBefore(until);
    }

    public Duration length() {
        return Duration.between(from, until);
    }
}
