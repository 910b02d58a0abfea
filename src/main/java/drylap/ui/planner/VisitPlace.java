package drylap.ui.planner;

import drylap.crews.Crew;
import drylap.kernel.CrewId;
import drylap.planning.Visit;
import drylap.ui.drawn.FolderShown;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZoneOffset;

/** Where a visit may go: a crew, and a day and hour by its clock. */
record VisitPlace(CrewId crew, LocalDate date, LocalTime time) {
    static VisitPlace of(FolderShown shown, Visit visit) {
        var there = visit.start().atZone(zone(shown, visit.crew()));
        return new VisitPlace(visit.crew(), there.toLocalDate(), there.toLocalTime());
    }

    Instant start(FolderShown shown) {
        return date.atTime(time).atZone(zone(shown, crew)).toInstant();
    }

    private static ZoneId zone(FolderShown shown, CrewId crew) {
        return shown.folder().crews().stream()
                .filter(one -> one.id().equals(crew))
                .findFirst()
                .map(Crew::zone)
                .orElse(ZoneOffset.UTC);
    }
}
