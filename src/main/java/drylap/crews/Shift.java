package drylap.crews;

import drylap.kernel.CrewId;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import org.jspecify.annotations.Nullable;

/** A crew's work day, in the clock time of its zone; a crew has at most one shift a date. */
public record Shift(
        CrewId crew,
        LocalDate date,
        LocalTime start,
        LocalTime end,
        @Nullable LocalTime breakStart,
        @Nullable LocalTime breakEnd,
        @Nullable LocalTime overtimeUntil,
        ZoneId zone) {

    /** The same hours on another date. */
    public Shift on(LocalDate other) {
        return new Shift(crew, other, start, end, breakStart, breakEnd, overtimeUntil, zone);
    }

    public Instant startsAt() {
        return at(start);
    }

    public Instant endsAt() {
        return at(end);
    }

    /** The latest moment at which the crew may be back at its base. */
    public Instant limit() {
        return overtimeUntil == null ? endsAt() : at(overtimeUntil);
    }

    public Instant at(LocalTime time) {
        return date.atTime(time).atZone(zone).toInstant();
    }
}
