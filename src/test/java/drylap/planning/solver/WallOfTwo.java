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
import drylap.weather.Forecast;
import drylap.weather.ForecastHour;
import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * One wall facing the rain, one crew a trade on the site's doorstep, 8:00 to 16:00 with a break at noon; every task takes an
 * hour, 15 minutes of setting up in the morning. What a test needs otherwise it says.
 */
final class WallOfTwo {
    static final SiteId SITE = new SiteId("S");
    static final FacadeId WALL = new FacadeId(SITE, "west");
    private static final GeoPoint PLACE = new GeoPoint(44.7, -124);

    final List<Opening> openings = new ArrayList<>();
    final List<Shift> shifts = new ArrayList<>();
    private final List<ForecastHour> hours = new ArrayList<>();

    WallOfTwo() {
        for (int hour = 0; hour < 72; hour++) hours.add(hour(hour, 0));
        for (Trade trade : Trade.values())
            for (int day = 0; day < 3; day++) shifts.add(shift(trade, MONDAY.plusDays(day)));
    }

    static Instant at(int day, int hour, int minute) {
        return MONDAY.plusDays(day).atTime(hour, minute).atZone(ZONE).toInstant();
    }

    WallOfTwo opening(String id, int level, LocalDate delivered, boolean test) {
        openings.add(new Opening(
                new OpeningId(id),
                WALL,
                level,
                1000,
                1000,
                Frame.WOOD,
                Method.B1,
                Approach.BARRIER,
                SecondLayer.NONE,
                delivered,
                test,
                0,
                0,
                null));
        return this;
    }

    WallOfTwo opening(String id) {
        return opening(id, 1, MONDAY, false);
    }

    WallOfTwo rain(int hourOfMonday) {
        hours.set(hourOfMonday, hour(hourOfMonday, 2));
        return this;
    }

    private static ForecastHour hour(int hour, double rain) {
        return new ForecastHour(at(0, 0, 0).plusSeconds(3600L * hour), rain, rain > 0 ? 0.9 : 0, 5, 7, 270, 12, 70);
    }

    static CrewId crew(Trade trade) {
        return new CrewId(trade.code());
    }

    static Shift shift(Trade trade, LocalDate date) {
        return new Shift(
                crew(trade),
                date,
                LocalTime.of(8, 0),
                LocalTime.of(16, 0),
                LocalTime.NOON,
                LocalTime.of(12, 30),
                null,
                ZONE);
    }

    JobFolder folder() {
        return folder(null);
    }

    /** @param due of the wall */
    JobFolder folder(@Nullable LocalDate due) {
        return new JobFolder(
                List.of(new Site(SITE, "Site", PLACE, ZONE, Terrain.III)),
                List.of(new Facade(WALL, 270, due)),
                openings,
                IntStream.range(0, Trade.values().length)
                        .mapToObj(i -> Trade.values()[i])
                        .map(trade -> new Crew(crew(trade), trade, Set.of(), PLACE, ZONE))
                        .toList(),
                shifts,
                new TravelTimes(Map.of()),
                List.of(new Forecast(SITE, hours)),
                new LabourTable(List.of(row(Task.INSTALL), row(Task.TEST), row(Task.CLAD))),
                Rules.STANDARD,
                List.of());
    }

    private static LabourRow row(Task task) {
        return new LabourRow(task, null, BigDecimal.valueOf(60), BigDecimal.ZERO, BigDecimal.ZERO, 15, 0, 0);
    }
}
