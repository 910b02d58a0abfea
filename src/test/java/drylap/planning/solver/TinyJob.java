package drylap.planning.solver;

import static drylap.planning.JobFixture.MONDAY;
import static drylap.planning.JobFixture.ZONE;

import drylap.assembly.Approach;
import drylap.assembly.Frame;
import drylap.assembly.Method;
import drylap.assembly.SecondLayer;
import drylap.crews.Crew;
import drylap.crews.Shift;
import drylap.crews.TravelTimes;
import drylap.kernel.CrewId;
import drylap.kernel.FacadeId;
import drylap.kernel.GeoPoint;
import drylap.kernel.OpeningId;
import drylap.kernel.Rule;
import drylap.kernel.Rules;
import drylap.kernel.SiteId;
import drylap.kernel.Task;
import drylap.kernel.Trade;
import drylap.planning.JobFolder;
import drylap.planning.LabourRow;
import drylap.planning.LabourTable;
import drylap.sites.Facade;
import drylap.sites.Opening;
import drylap.sites.Site;
import drylap.sites.Terrain;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;

/**
 * Jobs small enough for an exact solver: one site with the crews' base on it (no roads), no set-up minutes, no weather, two
 * walls, barrier first and no second layer, so that only installs and cladding remain.
 */
final class TinyJob {
    static final int DAYS = 4;
    private static final SiteId SITE = new SiteId("S");
    private static final GeoPoint PLACE = new GeoPoint(44.7, -124);

    private TinyJob() {}

    static JobFolder of(int openings, long seed) {
        Random random = new Random(seed);
        List<Opening> all = new ArrayList<>();
        for (int i = 0; i < openings; i++) all.add(opening(i, random));
        LocalDate due = MONDAY.plusDays(random.nextInt(2));
        List<Crew> crews =
                List.of(crew("window-1", Trade.WINDOW), crew("window-2", Trade.WINDOW), crew("siding-1", Trade.SIDING));
        return new JobFolder(
                List.of(new Site(SITE, "Tiny", PLACE, ZONE, Terrain.III)),
                List.of(new Facade(wall(0), 0, due), new Facade(wall(1), 180, due.plusDays(1))),
                all,
                crews,
                crews.stream().flatMap(crew -> shifts(crew.id()).stream()).toList(),
                new TravelTimes(Map.of()),
                List.of(),
                new LabourTable(List.of(row(Task.INSTALL, 70, 20), row(Task.CLAD, 30, 40))),
                Rules.STANDARD.with(Rule.WEIGHT_OVERTIME, 0).with(Rule.BEYOND_RAIN_P, 0),
                List.of());
    }

    private static FacadeId wall(int number) {
        return new FacadeId(SITE, "wall-" + number);
    }

    private static Opening opening(int i, Random random) {
        return new Opening(
                new OpeningId("W" + i),
                wall(i % 2),
                1 + i % 3 / 2,
                600 + 100 * random.nextInt(20),
                1000 + 100 * random.nextInt(10),
                Frame.WOOD,
                Method.B1,
                Approach.BARRIER,
                SecondLayer.NONE,
                MONDAY.plusDays(random.nextInt(2)),
                false,
                0,
                0,
                null);
    }

    private static Crew crew(String name, Trade trade) {
        return new Crew(new CrewId(name), trade, Set.of(), PLACE, ZONE);
    }

    private static List<Shift> shifts(CrewId crew) {
        List<Shift> shifts = new ArrayList<>();
        for (int day = 0; day < DAYS; day++)
            shifts.add(new Shift(
                    crew,
                    MONDAY.plusDays(day),
                    LocalTime.of(8, 0),
                    LocalTime.of(14, 30),
                    LocalTime.of(11, 30),
                    LocalTime.NOON,
                    null,
                    ZONE));
        return shifts;
    }

    private static LabourRow row(Task task, int fixed, int perM2) {
        return new LabourRow(
                task, null, BigDecimal.valueOf(fixed), BigDecimal.valueOf(perM2), BigDecimal.ZERO, 0, 0, 0);
    }
}
