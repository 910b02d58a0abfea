package drylap.climate;

import drylap.kernel.TimeWindow;
import java.time.Instant;

/** Whole minutes from a moment some days before the plan, so that walls may still dry from rain that fell before it. */
public record MinuteAxis(Instant zero, int length) {
    public static final int NEVER = Integer.MAX_VALUE / 2;
    private static final int SECONDS = 60;

    public int floor(Instant instant) {
        return Math.toIntExact(Math.clamp(Math.floorDiv(seconds(instant), SECONDS), -NEVER, NEVER));
    }

    public int ceil(Instant instant) {
        return Math.toIntExact(Math.clamp(Math.ceilDiv(seconds(instant), SECONDS), -NEVER, NEVER));
    }

    public Instant at(int minute) {
        return zero.plusSeconds((long) minute * SECONDS);
    }

    public TimeWindow span() {
        return new TimeWindow(zero, at(length));
    }

    private long seconds(Instant instant) {
        return instant.getEpochSecond() - zero.getEpochSecond();
    }
}
