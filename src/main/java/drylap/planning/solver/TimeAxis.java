package drylap.planning.solver;

import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;

/** Whole minutes from the plan's start, which is minute 0; what happened before is negative. */
record TimeAxis(Instant zero) {
    static final int NEVER = Integer.MAX_VALUE / 4;

    static TimeAxis from(Instant start) {
        Instant minute = start.truncatedTo(ChronoUnit.MINUTES);
        return new TimeAxis(minute.isBefore(start) ? minute.plus(1, ChronoUnit.MINUTES) : minute);
    }

    int floor(Instant instant) {
        return clamp(Math.floorDiv(Duration.between(zero, instant).toSeconds(), 60L));
    }

    int ceil(Instant instant) {
        return clamp(Math.ceilDiv(Duration.between(zero, instant).toSeconds(), 60L));
    }

    Instant at(int minute) {
        return zero.plus(minute, ChronoUnit.MINUTES);
    }

    private static int clamp(long minutes) {
        return (int) Math.max(-NEVER, Math.min(NEVER, minutes));
    }
}
