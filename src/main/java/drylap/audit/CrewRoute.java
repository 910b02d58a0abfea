package drylap.audit;

import drylap.crews.Crew;
import drylap.crews.Shift;
import drylap.planning.Visit;
import drylap.sites.Opening;
import drylap.sites.Site;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** A crew's day on the road: what lies in front of each task, and the way back. */
record CrewRoute(Crew crew, LocalDate date, Optional<Shift> shift, List<Leg> legs, int homeMin) {
    /** A task with the minutes of travel and of setting up in front of it. */
    record Leg(Visit visit, int travelMin, int setupMin) {}

    static List<CrewRoute> all(JobBook book, Timetable timetable) {
        WorkMinutes minutes = new WorkMinutes(book.folder().labour().rows());
        Roads roads = new Roads(book.folder().travel());
        List<CrewRoute> routes = new ArrayList<>();
        for (Map.Entry<Timetable.CrewDay, List<Visit>> day : timetable.byDay().entrySet()) {
            Crew crew = book.crew(day.getKey().crew()).orElseThrow();
            routes.add(route(book, crew, day.getKey().date(), day.getValue(), minutes, roads));
        }
        return routes;
    }

    private static CrewRoute route(
            JobBook book, Crew crew, LocalDate date, List<Visit> day, WorkMinutes minutes, Roads roads) {
        List<Leg> legs = new ArrayList<>();
        Opening previous = null;
        for (Visit visit : day) {
            Opening opening = book.opened(visit.opening());
            int setup = minutes.setup(opening, visit.task(), previous);
            legs.add(new Leg(visit, travel(book, roads, crew, previous, opening), setup));
            previous = opening;
        }
        Site last = siteOf(book, book.opened(day.getLast().opening()));
        return new CrewRoute(crew, date, book.shift(crew.id(), date), legs, roads.back(last, crew));
    }

    private static int travel(JobBook book, Roads roads, Crew crew, @Nullable Opening from, Opening to) {
        Site site = siteOf(book, to);
        return from == null ? roads.out(crew, site) : roads.between(siteOf(book, from), site);
    }

    private static Site siteOf(JobBook book, Opening opening) {
        return book.site(opening.facade().site());
    }

    Instant back() {
        return legs.getLast().visit().end().plus(Duration.ofMinutes(homeMin));
    }

    int travelMin() {
        return homeMin + legs.stream().mapToInt(Leg::travelMin).sum();
    }

    int setupMin() {
        return legs.stream().mapToInt(Leg::setupMin).sum();
    }

    /** Minutes from the shift's end to the crew's arrival at its base. */
    long overtimeMin() {
        return shift.map(own ->
                        Math.max(0, Duration.between(own.endsAt(), back()).toMinutes()))
                .orElse(0L);
    }
}
