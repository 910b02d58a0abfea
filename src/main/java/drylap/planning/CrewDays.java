package drylap.planning;

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

    /** What speaks against it, in words. */
    Optional<String> problem() {
        if (weekdays.isEmpty()) return Optional.of("no day of the week is chosen; accepted: one or more");
        if (until.isBefore(from))
            return Optional.of("the last day %s is before the first, %s; accepted: that day or a later one"
                    .formatted(until, from));
        if (until.isAfter(from.plusDays(MOST_DAYS)))
            return Optional.of("the last day %s is more than a year after the first; accepted: up to %s"
                    .formatted(until, from.plusDays(MOST_DAYS)));
        if (!end.isAfter(start))
            return Optional.of("the day ends at %s and starts at %s; accepted: an end after the start, the same day"
                    .formatted(end, start));
        return againstBreak();
    }

    private Optional<String> againstBreak() {
        if ((breakStart == null) != (breakEnd == null))
            return Optional.of("the break has one time only; accepted: from and to, or neither");
        if (breakStart == null || breakEnd == null) return Optional.empty();
        return breakStart.isBefore(start) || breakEnd.isAfter(end) || breakEnd.isBefore(breakStart)
                ? Optional.of("the break is from %s to %s; accepted: within the day, %s to %s"
                        .formatted(breakStart, breakEnd, start, end))
                : Optional.empty();
    }

    Stream<LocalDate> dates() {
        return from.datesUntil(until.plusDays(1)).filter(date -> weekdays.contains(date.getDayOfWeek()));
    }
}
