package drylap.crews;

import drylap.kernel.CrewId;
import drylap.speech.Saying;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import org.jspecify.annotations.Nullable;

/**
 * A crew that does not come, or not all day, although the job folder has a shift for it.
 *
 * @param from the clock time of the shift's zone from which it is away; with {@code until} absent for the whole day
 * @param by who said so
 */
public record Absence(
        long id,
        CrewId crew,
        LocalDate date,
        @Nullable LocalTime from,
        @Nullable LocalTime until,
        String reason,
        String by,
        Instant at) {
    public Absence {
        if ((from == null) != (until == null))
            throw new IllegalArgumentException("an absence has both a from and an until, or is of the whole day");
        if (from != null && until != null && !from.isBefore(until))
            throw new IllegalArgumentException("an absence from %s until %s is empty".formatted(from, until));
    }

    public boolean wholeDay() {
        return from == null;
    }

    public Saying saying() {
        return from == null || until == null ? Saying.of("away all day") : Saying.of("away {0} to {1}", from, until);
    }

    public String words() {
        return saying().words();
    }
}
