package drylap.planning;

import drylap.speech.Saying;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * On which days a crew comes, and for which hours, in its clock time.
 *
 * @param from the first date that may be a day
 * @param until the last
 * @param breakStart none with {@code breakEnd}: no break
 */
public record CrewDays(
        Set<DayOfWeek> weekdays,
        LocalDate from,
        LocalDate until,
        LocalTime start,
        LocalTime end,
        @Nullable LocalTime breakStart,
        @Nullable LocalTime breakEnd) {
    /** Beyond a year nobody knows who comes. */
    private static final int MOST_DAYS = 366;

    public CrewDays {
        weekdays = Set.copyOf(weekdays);
    }

    /** What speaks against it. */
    Optional<Saying> problem() {
        if (weekdays.isEmpty()) return Optional.of(Saying.of("no day of the week is chosen; accepted: one or more"));
        if (until.isBefore(from))
            return Optional.of(Saying.of(
                    "the last day {0} is before the first, {1}; accepted: that day or a later one", until, from));
        if (until.isAfter(from.plusDays(MOST_DAYS)))
            return Optional.of(Saying.of(
                    "the last day {0} is more than a year after the first; accepted: up to {1}",
                    until, from.plusDays(MOST_DAYS)));
        if (!end.isAfter(start))
            return Optional.of(Saying.of(
                    "the day ends at {0} and starts at {1}; accepted: an end after the start, the same day",
                    end, start));
        return againstBreak();
    }

    private Optional<Saying> againstBreak() {
        if ((breakStart == null) != (breakEnd == null))
            return Optional.of(Saying.of("the break has one time only; accepted: from and to, or neither"));
        if (breakStart == null || breakEnd == null) return Optional.empty();
        return breakStart.isBefore(start) || breakEnd.isAfter(end) || breakEnd.isBefore(breakStart)
                ? Optional.of(Saying.of(
                        "the break is from {0} to {1}; accepted: within the day, {2} to {3}",
                        breakStart, breakEnd, start, end))
                : Optional.empty();
    }

    Stream<LocalDate> dates() {
        return from.datesUntil(until.plusDays(1)).filter(date -> weekdays.contains(date.getDayOfWeek()));
    }
}
