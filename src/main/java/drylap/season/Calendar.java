package drylap.season;

import drylap.climate.MinuteAxis;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.YearMonth;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;

/** The days from the start to the end of the twelfth month, by the site's clock. */
final class Calendar {
    /** Walls may still dry from rain that fell so long before the start. */
    private static final Duration BEFORE = Duration.ofDays(3);

    final ZoneId zone;
    final MinuteAxis axis;
    final int start;
    final LocalDate first;
    final int days;
    private final YearMonth month;

    Calendar(Instant from, ZoneId zone) {
        this.zone = zone;
        first = from.atZone(zone).toLocalDate();
        month = YearMonth.from(first);
        LocalDate after = month.plusMonths(Season.MONTHS).atDay(1);
        days = Math.toIntExact(ChronoUnit.DAYS.between(first, after));
        Instant zero = from.truncatedTo(ChronoUnit.HOURS).minus(BEFORE);
        Instant end = after.plusDays(2).atStartOfDay(zone).toInstant();
        axis = new MinuteAxis(zero, Math.toIntExact(Duration.between(zero, end).toMinutes()));
        start = axis.ceil(from);
    }

    LocalDate date(int day) {
        return first.plusDays(day);
    }

    int day(LocalDate date) {
        return Math.toIntExact(ChronoUnit.DAYS.between(first, date));
    }

    YearMonth month(int index) {
        return month.plusMonths(index);
    }

    int monthOf(int day) {
        return (int) ChronoUnit.MONTHS.between(month, YearMonth.from(date(day)));
    }

    /** The first day of a month that is not before the start. */
    int firstDay(int index) {
        return Math.max(0, day(month(index).atDay(1)));
    }

    int midnight(int day) {
        return axis.ceil(date(day).atStartOfDay(zone).toInstant());
    }
}
