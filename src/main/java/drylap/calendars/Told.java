package drylap.calendars;

import drylap.kernel.GeoPoint;
import java.time.Instant;
import java.time.temporal.ChronoUnit;

/** What an entry says: when, where and what. Two that are equal are no change for anybody. */
record Told(Instant start, Instant end, String summary, String place, GeoPoint where, String description) {
    Told {
        // iCalendar knows no parts of a second
        start = start.truncatedTo(ChronoUnit.SECONDS);
        end = end.truncatedTo(ChronoUnit.SECONDS);
    }

    Told cutAt(Instant then, String why) {
        return new Told(start, then, summary, place, where, why + "\n\n" + description);
    }
}
