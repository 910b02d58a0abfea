package drylap.ui.drawn;

import drylap.kernel.TimeWindow;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;

/** Minutes of one date by the clock on the wall; what lies before or after is cut off at midnight. */
record DayClock(LocalDate date, ZoneId zone) {
    static final int MINUTES = 1440;

    int minute(Instant instant) {
        if (!instant.isAfter(start())) return 0;
        if (!instant.isBefore(end())) return MINUTES;
        return instant.atZone(zone).toLocalTime().toSecondOfDay() / 60;
    }

    Instant start() {
        return date.atStartOfDay(zone).toInstant();
    }

    Instant end() {
        return date.plusDays(1).atStartOfDay(zone).toInstant();
    }

    boolean meets(TimeWindow window) {
        return window.overlaps(new TimeWindow(start(), end()));
    }
}
