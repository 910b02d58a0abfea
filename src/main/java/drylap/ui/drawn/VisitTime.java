package drylap.ui.drawn;

import drylap.planning.Visit;
import java.time.LocalDateTime;
import java.time.ZoneId;

/** When a visit begins, by the clock on the wall of its site, and whose it is. */
public record VisitTime(LocalDateTime start, String crew) {
    static VisitTime of(Visit visit, ZoneId zone) {
        return new VisitTime(
                LocalDateTime.ofInstant(visit.start(), zone), visit.crew().value());
    }
}
