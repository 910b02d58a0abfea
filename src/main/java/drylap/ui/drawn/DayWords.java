package drylap.ui.drawn;

import drylap.kernel.TimeWindow;
import drylap.speech.Speech;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** Stretches of hours, taken from each other and said day by day. */
final class DayWords {
    private static final double MINUTES = 60;

    private DayWords() {}

    /** Such as "Mon 13 Apr 07:00 to 11:30, 14:00 to 16:00", one for each day. */
    static List<String> days(Speech say, List<TimeWindow> windows, ZoneId zone) {
        Map<LocalDate, List<TimeWindow>> byDate = windows.stream()
                .collect(Collectors.groupingBy(
                        window -> window.from().atZone(zone).toLocalDate(), TreeMap::new, Collectors.toList()));
        return byDate.entrySet().stream()
                .map(day -> "%s %s"
                        .formatted(
                                say.day(day.getKey()),
                                day.getValue().stream()
                                        .map(window -> say.it(
                                                "{0} to {1}",
                                                say.clock(window.from(), zone), say.clock(window.until(), zone)))
                                        .collect(Collectors.joining(", "))))
                .toList();
    }

    /** What of the first lies in none of the others; both are sorted and disjoint, as is the answer. */
    static List<TimeWindow> without(List<TimeWindow> first, List<TimeWindow> others) {
        List<TimeWindow> rest = new ArrayList<>();
        for (TimeWindow window : first) {
            Instant from = window.from();
            for (TimeWindow other : others) {
                if (!other.overlaps(window)) continue;
                if (from.isBefore(other.from())) rest.add(new TimeWindow(from, other.from()));
                if (other.until().isAfter(from)) from = other.until();
            }
            if (from.isBefore(window.until())) rest.add(new TimeWindow(from, window.until()));
        }
        return List.copyOf(rest);
    }

    static Duration length(List<TimeWindow> windows) {
        return windows.stream().map(TimeWindow::length).reduce(Duration.ZERO, Duration::plus);
    }

    /** Such as "3.5 h". */
    static String hours(Duration length) {
        return String.format(Locale.ROOT, "%.1f h", length.toMinutes() / MINUTES);
    }
}
