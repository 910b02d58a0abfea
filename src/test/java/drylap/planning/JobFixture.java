package drylap.planning;

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
import drylap.kernel.Rules;
import drylap.kernel.SiteId;
import drylap.kernel.Task;
import drylap.kernel.Trade;
import drylap.sites.Facade;
import drylap.sites.Opening;
import drylap.sites.Site;
import drylap.sites.Terrain;
import drylap.weather.Forecast;
import drylap.weather.ForecastHour;
import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;

/** Job folders for tests of the planner: invented walls, crews and weather, the same for the same seed. */
public final class JobFixture {
    public static final ZoneId ZONE = ZoneId.of("America/Los_Angeles");
    public static final LocalDate MONDAY = LocalDate.of(2026, 4, 13);

    private final Random random;
    private final List<Site> sites = new ArrayList<>();
    private final List<Facade> facades = new ArrayList<>();
    private final List<Opening> openings = new ArrayList<>();
    private final List<Crew> crews = new ArrayList<>();
    private final List<Shift> shifts = new ArrayList<>();
    private final List<Forecast> forecasts = new ArrayList<>();

    private JobFixture(long seed) {
        random = new Random(seed);
    }

    /** About so many openings in courses of 4 to 8 on walls of 1 to 4 levels, with crews enough for two to three weeks. */
    public static JobFolder job(int openings, long seed) {
        JobFixture fixture = new JobFixture(seed);
        while (fixture.openings.size() < openings) fixture.site(openings);
        fixture.crews(Trade.WINDOW, 1 + openings / 60);
        fixture.crews(Trade.TESTER, 1 + openings / 600);
        fixture.crews(Trade.WRAP, 1 + openings / 100);
        fixture.crews(Trade.SIDING, 1 + openings / 60);
        return fixture.folder();
    }

    /** Walls N and S of two levels, one wrapped opening a level, two wrap crews. */
    public static JobFolder twoWallsOfTwoLevels() {
        JobFixture fixture = new JobFixture(1);
        SiteId site = new SiteId("S1");
        fixture.sites.add(new Site(site, "Site S1", new GeoPoint(44.7, -124), ZONE, Terrain.III));
        for (String wall : List.of("N", "S")) {
            FacadeId id = new FacadeId(site, wall);
            fixture.facades.add(new Facade(id, wall.equals("N") ? 0 : 180, null));
            for (int level = 1; level <= 2; level++) fixture.opening(id, level, Method.B1, SecondLayer.TUCK);
        }
        for (Trade trade : Trade.values()) fixture.crews(trade, 2);
        return withoutForecast(fixture.folder());
    }

    public static JobFolder withoutForecast(JobFolder folder) {
        return new JobFolder(
                folder.sites(),
                folder.facades(),
                folder.openings(),
                folder.crews(),
                folder.shifts(),
                folder.travel(),
                List.of(),
                folder.labour(),
                folder.rules(),
                folder.published());
    }

    private void site(int most) {
        SiteId id = new SiteId("S" + (sites.size() + 1));
        GeoPoint place = new GeoPoint(44.6 + random.nextDouble() / 4, -124.05 + random.nextDouble() / 4);
        sites.add(new Site(id, "Site " + id, place, ZONE, Terrain.III));
        for (int wall = 0; wall < 3 && openings.size() < most; wall++) wall(id, wall, most);
        forecasts.add(forecast(id, 16));
    }

    private void wall(SiteId site, int wall, int most) {
        FacadeId id = new FacadeId(site, "NESW".substring(wall, wall + 1));
        facades.add(new Facade(id, wall * 90, MONDAY.plusDays(9 + random.nextInt(8))));
        Method method = Method.values()[random.nextInt(4)];
        SecondLayer layer = SecondLayer.values()[random.nextInt(3)];
        int levels = 1 + random.nextInt(4);
        for (int level = 1; level <= levels; level++)
            for (int i = 4 + random.nextInt(5); i > 0 && openings.size() < most; i--) opening(id, level, method, layer);
    }

    private void opening(FacadeId facade, int level, Method method, SecondLayer layer) {
        Approach approach = random.nextInt(3) == 0 ? Approach.BARRIER : Approach.DRAINAGE;
        openings.add(new Opening(
                new OpeningId("W%04d".formatted(openings.size() + 1)),
                facade,
                level,
                600 + 100 * random.nextInt(15),
                900 + 100 * random.nextInt(12),
                Frame.values()[random.nextInt(4)],
                method,
                approach,
                layer,
                MONDAY.plusDays(random.nextInt(4) - 2),
                random.nextInt(20) == 0,
                0,
                0,
                null));
    }

    private void crews(Trade trade, int count) {
        for (int i = 1; i <= count; i++) {
            CrewId id = new CrewId(trade.code() + "-" + i);
            GeoPoint base = new GeoPoint(44.6 + random.nextDouble() / 4, -124.05 + random.nextDouble() / 4);
            crews.add(new Crew(id, trade, Set.of(), base, ZONE));
            for (int day = 0; day < 19; day++) if (day % 7 < 6) shifts.add(shift(id, MONDAY.plusDays(day)));
        }
    }

    private static Shift shift(CrewId crew, LocalDate date) {
        return new Shift(
                crew,
                date,
                LocalTime.of(7, 0),
                LocalTime.of(15, 30),
                LocalTime.of(12, 0),
                LocalTime.of(12, 30),
                LocalTime.of(17, 0),
                ZONE);
    }

    /** Dry spells and wet ones, with chances that rise before rain. */
    private Forecast forecast(SiteId site, int days) {
        Instant start = MONDAY.atStartOfDay(ZONE).toInstant();
        List<ForecastHour> hours = new ArrayList<>();
        double chance = 0.05;
        for (int hour = 0; hour < days * 24; hour++) {
            chance = Math.clamp(chance + (random.nextDouble() - 0.53) * 0.14, 0, 0.9);
            boolean wet = chance > 0.35;
            hours.add(new ForecastHour(
                    start.plus(hour, ChronoUnit.HOURS),
                    wet ? 0.3 + random.nextDouble() * 2 : 0,
                    Math.round(chance * 100) / 100.0,
                    3 + random.nextDouble() * 3,
                    5 + random.nextDouble() * 5,
                    200 + random.nextInt(80),
                    9 + random.nextInt(8),
                    75));
        }
        return new Forecast(site, hours);
    }

    private JobFolder folder() {
        return new JobFolder(
                sites,
                facades,
                openings,
                crews,
                shifts,
                new TravelTimes(Map.of()),
                forecasts,
                labour(),
                Rules.STANDARD,
                List.of());
    }

    private static LabourTable labour() {
        return new LabourTable(List.of(
                row(Task.INSTALL, 55, 12, 15, 20, 10, 5),
                row(Task.TEST, 45, 0, 0, 15, 10, 5),
                row(Task.WRAP, 15, 6, 0, 20, 15, 10),
                row(Task.CLAD, 20, 10, 0, 20, 15, 10)));
    }

    private static LabourRow row(Task task, int fixed, int perM2, int pan, int site, int facade, int level) {
        return new LabourRow(
                task,
                null,
                BigDecimal.valueOf(fixed),
                BigDecimal.valueOf(perM2),
                BigDecimal.valueOf(pan),
                site,
                facade,
                level);
    }
}
