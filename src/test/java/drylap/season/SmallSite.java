package drylap.season;

import drylap.assembly.Approach;
import drylap.assembly.Frame;
import drylap.assembly.Method;
import drylap.assembly.SecondLayer;
import drylap.climate.MonthlyNormals;
import drylap.crews.Crew;
import drylap.crews.Shift;
import drylap.crews.TravelTimes;
import drylap.kernel.CrewId;
import drylap.kernel.FacadeId;
import drylap.kernel.GeoPoint;
import drylap.kernel.OpeningId;
import drylap.kernel.Rule;
import drylap.kernel.RuleBook;
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
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/** One wall on the equator, where it is light from six to six, with a crew of each trade that lives next door. */
record SmallSite(
        GeoPoint place,
        LocalTime begin,
        LocalTime end,
        @Nullable LocalDate due,
        int openings,
        LocalDate delivered,
        Rules rules) {
    static final SiteId SITE = new SiteId("S");
    static final FacadeId WALL = new FacadeId(SITE, "W");
    /** A Monday, and the first of a month. */
    static final LocalDate MONDAY = LocalDate.parse("2026-06-01");

    static final Instant FROM = MONDAY.atStartOfDay(ZoneId.of("UTC")).toInstant();

    /** Six hours a day, every day; installs of 60 minutes and claddings of 30, at ten openings. */
    static SmallSite usual() {
        return new SmallSite(
                new GeoPoint(0, 0), LocalTime.of(9, 0), LocalTime.of(15, 0), null, 10, MONDAY, Rules.STANDARD);
    }

    SmallSite due(LocalDate date) {
        return new SmallSite(place, begin, end, date, openings, delivered, rules);
    }

    SmallSite delivered(LocalDate date) {
        return new SmallSite(place, begin, end, due, openings, date, rules);
    }

    SmallSite with(Rule rule, double value) {
        return new SmallSite(place, begin, end, due, openings, delivered, rules.with(rule, value));
    }

    SmallSite at(GeoPoint other, LocalTime from, LocalTime until) {
        return new SmallSite(other, from, until, due, openings, delivered, rules);
    }

    JobFolder folder() {
        Site site = new Site(SITE, "Small", place, ZoneId.of("UTC"), Terrain.values()[0]);
        List<Crew> crews = new ArrayList<>();
        List<Shift> shifts = new ArrayList<>();
        for (Trade trade : List.of(Trade.WINDOW, Trade.WRAP, Trade.SIDING)) {
            Crew crew = new Crew(new CrewId(trade.code()), trade, Set.of(), place, ZoneId.of("UTC"));
            crews.add(crew);
            for (int day = 0; day < 7; day++)
                shifts.add(new Shift(crew.id(), MONDAY.plusDays(day), begin, end, null, null, null, crew.zone()));
        }
        return new JobFolder(
                List.of(site),
                List.of(new Facade(WALL, 180, due)),
                IntStream.rangeClosed(1, openings).mapToObj(this::opening).toList(),
                crews,
                shifts,
                new TravelTimes(java.util.Map.of()),
                List.of(),
                new LabourTable(List.of(row(Task.INSTALL, 60), row(Task.WRAP, 20), row(Task.CLAD, 30))),
                RuleBook.of(rules),
                List.of());
    }

    private Opening opening(int number) {
        return new Opening(
                new OpeningId("O" + number),
                WALL,
                1,
                1000,
                1000,
                Frame.WOOD,
                Method.A1,
                Approach.BARRIER,
                SecondLayer.NONE,
                delivered,
                false,
                0,
                0,
                null);
    }

    private static LabourRow row(Task task, int minutes) {
        return new LabourRow(task, null, new BigDecimal(minutes), BigDecimal.ZERO, BigDecimal.ZERO, 0, 0, 0);
    }

    /** The same in every month. */
    static List<MonthlyNormals> normals(double rainDays, double coldDays) {
        return IntStream.rangeClosed(1, 12)
                .mapToObj(month -> new MonthlyNormals(null, month, rainDays * 5, rainDays, coldDays, 0))
                .toList();
    }
}
