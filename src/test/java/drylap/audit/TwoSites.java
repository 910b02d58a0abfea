package drylap.audit;

import static drylap.assembly.Approach.BARRIER;
import static drylap.assembly.Approach.DRAINAGE;

import drylap.assembly.Method;
import drylap.crews.Crew;
import drylap.crews.Shift;
import drylap.crews.TravelTimes;
import drylap.kernel.CrewId;
import drylap.kernel.FacadeId;
import drylap.kernel.GeoPoint;
import drylap.kernel.OpeningId;
import drylap.kernel.Rules;
import drylap.kernel.SiteId;
import drylap.kernel.Task;
import drylap.kernel.Trade;
import drylap.planning.JobFolder;
import drylap.planning.LabourRow;
import drylap.planning.LabourTable;
import drylap.planning.PublishedVisit;
import drylap.planning.Visit;
import drylap.sites.Facade;
import drylap.sites.Opening;
import drylap.sites.Site;
import drylap.sites.Terrain;
import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Two sites, seven openings, five crews, three days in April 2026, all written by hand. Monday is the 13th. The openings are
 * 1.5 m² but for Q4 (1.812 m²); Q3 stands open with two of its four steps left; M3 comes too late to be planned.
 */
final class TwoSites {
    static final ZoneId ZONE = ZoneId.of("America/Vancouver");
    static final FacadeId QUAY_NORTH = new FacadeId(new SiteId("quay"), "N");
    static final FacadeId QUAY_EAST = new FacadeId(new SiteId("quay"), "E");
    static final FacadeId MILL_WEST = new FacadeId(new SiteId("mill"), "W");
    private static final GeoPoint QUAY = new GeoPoint(49.28, -123.12);
    private static final GeoPoint MILL = new GeoPoint(49.20, -122.91);

    private TwoSites() {}

    static Instant at(String dayAndTime) {
        return LocalDateTime.parse("2026-04-" + dayAndTime.replace(' ', 'T'))
                .atZone(ZONE)
                .toInstant();
    }

    static JobFolder folder() {
        return new JobFolder(
                List.of(
                        new Site(new SiteId("quay"), "Quay", QUAY, ZONE, Terrain.III),
                        new Site(new SiteId("mill"), "Mill", MILL, ZONE, Terrain.III)),
                List.of(
                        new Facade(QUAY_NORTH, 0, LocalDate.of(2026, 4, 14)),
                        new Facade(QUAY_EAST, 90, null),
                        new Facade(MILL_WEST, 270, null)),
                openings(),
                crews(),
                shifts(),
                travel(),
                TwoForecasts.all(),
                labour(),
                Rules.STANDARD,
                published());
    }

    private static List<Opening> openings() {
        return Stream.of(
                        Design.of("Q1", QUAY_NORTH, 1, Method.A, DRAINAGE),
                        Design.of("Q2", QUAY_NORTH, 1, Method.A1, BARRIER).tested(),
                        Design.of("Q3", QUAY_NORTH, 2, Method.B, BARRIER).begun(4),
                        Design.of("Q4", QUAY_EAST, 1, Method.A1, DRAINAGE).sized(1200, 1510),
                        Design.of("M1", MILL_WEST, 1, Method.B1, DRAINAGE).tucked(),
                        Design.of("M2", MILL_WEST, 1, Method.A, BARRIER).delivered("2026-04-14"),
                        Design.of("M3", MILL_WEST, 2, Method.A1, BARRIER)
                                .delivered("2026-05-01")
                                .priority(2))
                .map(Design::opening)
                .toList();
    }

    private static List<Crew> crews() {
        return List.of(
                new Crew(new CrewId("W1"), Trade.WINDOW, Set.of(), QUAY, ZONE),
                // 0.09 degrees north of the mill: 10.0075 km, so 19.5 minutes each way.
                new Crew(
                        new CrewId("W2"),
                        Trade.WINDOW,
                        Set.of(Method.A, Method.B1),
                        new GeoPoint(49.29, -122.91),
                        ZONE),
                new Crew(new CrewId("T1"), Trade.TESTER, Set.of(), QUAY, ZONE),
                new Crew(new CrewId("R1"), Trade.WRAP, Set.of(), QUAY, ZONE),
                new Crew(new CrewId("S1"), Trade.SIDING, Set.of(), QUAY, ZONE));
    }

    private static List<Shift> shifts() {
        List<Shift> shifts = new ArrayList<>();
        for (int day = 13; day <= 15; day++)
            for (String crew : List.of("W1", "W2", "R1")) shifts.add(shift(crew, day, "07:00", "16:00", true, null));
        shifts.add(shift("T1", 14, "05:00", "16:00", false, null));
        shifts.add(shift("T1", 15, "05:00", "16:00", false, null));
        shifts.add(shift("S1", 14, "07:00", "16:00", true, null));
        shifts.add(shift("S1", 15, "05:00", "14:30", true, "17:00"));
        return shifts;
    }

    static Shift shift(String crew, int day, String from, String to, boolean pause, @Nullable String overtime) {
        return new Shift(
                new CrewId(crew),
                LocalDate.of(2026, 4, day),
                LocalTime.parse(from),
                LocalTime.parse(to),
                pause ? LocalTime.NOON : null,
                pause ? LocalTime.of(12, 30) : null,
                overtime == null ? null : LocalTime.parse(overtime),
                ZONE);
    }

    private static TravelTimes travel() {
        return new TravelTimes(Map.ofEntries(
                leg("W1", "quay", 20),
                leg("quay", "W1", 25),
                leg("W1", "mill", 45),
                leg("mill", "W1", 40),
                leg("T1", "quay", 15),
                leg("quay", "T1", 15),
                leg("R1", "quay", 10),
                leg("quay", "R1", 10),
                leg("R1", "mill", 30),
                leg("mill", "R1", 30),
                leg("S1", "quay", 10),
                leg("quay", "S1", 10),
                leg("S1", "mill", 30),
                leg("mill", "S1", 30),
                leg("quay", "mill", 30),
                leg("mill", "quay", 35)));
    }

    static Map.Entry<TravelTimes.Leg, Integer> leg(String from, String to, int minutes) {
        return Map.entry(new TravelTimes.Leg(from, to), minutes);
    }

    private static LabourTable labour() {
        return new LabourTable(List.of(
                row(Task.INSTALL, null, 30, 20, 10, 30, 15, 10),
                row(Task.INSTALL, Method.B, 40, 20, 10, 30, 15, 10),
                row(Task.WRAP, null, 10, 10, 0, 20, 10, 5),
                row(Task.CLAD, null, 20, 20, 0, 30, 15, 10)));
    }

    private static LabourRow row(
            Task task, @Nullable Method method, int fixed, int perM2, int pan, int site, int facade, int level) {
        return new LabourRow(
                task, method, new BigDecimal(fixed), new BigDecimal(perM2), new BigDecimal(pan), site, facade, level);
    }

    /** One pinned, one from another crew, one from another day, and one whose task is no longer needed. */
    private static List<PublishedVisit> published() {
        return List.of(
                new PublishedVisit(visit("R1", 1, "M1", Task.WRAP, "14 09:00", 25), true),
                new PublishedVisit(visit("W1", 2, "Q1", Task.INSTALL, "13 08:35", 70), false),
                new PublishedVisit(visit("W1", 5, "M1", Task.INSTALL, "13 14:00", 70), false),
                new PublishedVisit(visit("W1", 1, "Q4", Task.INSTALL, "14 08:00", 77), false),
                new PublishedVisit(visit("T1", 1, "Q1", Task.TEST, "14 14:00", 45), false));
    }

    static List<Visit> visits() {
        return List.of(
                visit("R1", 1, "M1", Task.WRAP, "14 09:00", 25),
                visit("R1", 2, "M2", Task.WRAP, "14 09:25", 25),
                visit("R1", 3, "Q1", Task.WRAP, "14 11:30", 25),
                visit("R1", 4, "Q3", Task.WRAP, "14 12:30", 25),
                visit("S1", 1, "Q1", Task.CLAD, "15 07:40", 50),
                visit("S1", 2, "Q2", Task.CLAD, "15 08:30", 50),
                visit("S1", 3, "Q3", Task.CLAD, "15 09:30", 50),
                visit("S1", 4, "Q4", Task.CLAD, "15 10:35", 57),
                visit("S1", 5, "M1", Task.CLAD, "15 12:32", 50),
                visit("S1", 6, "M2", Task.CLAD, "15 13:22", 50),
                visit("T1", 1, "Q2", Task.TEST, "14 10:45", 45),
                visit("W1", 1, "Q3", Task.INSTALL, "13 07:50", 35),
                visit("W1", 2, "Q1", Task.INSTALL, "13 08:35", 70),
                visit("W1", 3, "Q2", Task.INSTALL, "13 09:45", 60),
                visit("W1", 4, "Q4", Task.INSTALL, "13 12:30", 77),
                visit("W2", 1, "M1", Task.INSTALL, "13 07:50", 70),
                visit("W2", 1, "M2", Task.INSTALL, "14 07:50", 60));
    }

    static Visit visit(String crew, int sequence, String opening, Task task, String start, int minutes) {
        FacadeId facade = opening.startsWith("M") ? MILL_WEST : opening.equals("Q4") ? QUAY_EAST : QUAY_NORTH;
        int level = opening.equals("Q3") || opening.equals("M3") ? 2 : 1;
        Instant from = at(start);
        return new Visit(
                new CrewId(crew),
                from.atZone(ZONE).toLocalDate(),
                sequence,
                facade,
                level,
                new OpeningId(opening),
                task,
                from,
                from.plus(Duration.ofMinutes(minutes)));
    }

    static List<ClaimedPlan.Unplanned> unplanned() {
        return List.of(
                new ClaimedPlan.Unplanned(new OpeningId("M3"), Task.INSTALL, "no delivery"),
                new ClaimedPlan.Unplanned(new OpeningId("M3"), Task.CLAD, "waits for another task"));
    }
}
