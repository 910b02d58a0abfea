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
import drylap.kernel.Rule;
import drylap.kernel.RuleBook;
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
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/** Job folders by seed, with every code, every blank and lists in no order: whatever a table could lose is in there. */
public final class JobFolderFixture {
    private static final LocalDate MONDAY = LocalDate.of(2026, 4, 13);
    private static final List<ZoneId> ZONES =
            List.of(ZoneId.of("America/Los_Angeles"), ZoneId.of("Europe/Lisbon"), ZoneId.of("+05:30"));

    private final Random random;
    private final List<Site> sites = new ArrayList<>();
    private final List<Facade> facades = new ArrayList<>();
    private final List<Crew> crews = new ArrayList<>();

    private JobFolderFixture(long seed) {
        random = new Random(seed);
    }

    public static JobFolder of(long seed) {
        return new JobFolderFixture(seed).folder(4, 60, 48);
    }

    public static JobFolder of(long seed, int siteCount, int openingCount, int hours) {
        return new JobFolderFixture(seed).folder(siteCount, openingCount, hours);
    }

    private JobFolder folder(int siteCount, int openingCount, int hours) {
        for (int i = 0; i < siteCount; i++) addSite(i);
        for (int i = 0; i < 8; i++) addCrew(i);
        List<Opening> openings = shuffled(
                IntStream.range(0, openingCount).mapToObj(this::opening).toList());
        return new JobFolder(
                shuffled(sites),
                shuffled(facades),
                openings,
                shuffled(crews),
                shuffled(crews.stream()
                        .flatMap(crew -> IntStream.range(0, 5).mapToObj(day -> shift(crew, day)))
                        .toList()),
                new TravelTimes(legs()),
                shuffled(sites.stream().map(site -> forecast(site, hours)).toList()),
                new LabourTable(shuffled(labour())),
                rules(),
                published(openings));
    }

    private void addSite(int number) {
        SiteId id = new SiteId("S'%d é".formatted(number));
        sites.add(new Site(id, "Pier \"%d\", north; 北".formatted(number), place(), any(ZONES), any(Terrain.values())));
        for (String name : List.of("west", "court \\ side"))
            facades.add(new Facade(
                    new FacadeId(id, name), random.nextDouble() * 360, maybe(MONDAY.plusDays(random.nextInt(40)))));
    }

    private void addCrew(int number) {
        Set<Method> methods = new HashSet<>(
                Arrays.stream(Method.values()).filter(_ -> random.nextBoolean()).toList());
        crews.add(new Crew(new CrewId("crew " + number), Trade.values()[number % 4], methods, place(), any(ZONES)));
    }

    private Opening opening(int number) {
        return new Opening(
                new OpeningId("W-" + number),
                any(facades).id(),
                random.nextInt(-1, 9),
                random.nextInt(300, 3000),
                random.nextInt(300, 3000),
                any(Frame.values()),
                any(Method.values()),
                any(Approach.values()),
                any(SecondLayer.values()),
                MONDAY.plusDays(random.nextInt(30)),
                random.nextBoolean(),
                random.nextInt(5),
                random.nextInt(8),
                maybe(moment()),
                random.nextBoolean() ? Set.of(Task.WRAP, Task.TEST) : Set.of());
    }

    private Shift shift(Crew crew, int day) {
        boolean rests = random.nextBoolean();
        return new Shift(
                crew.id(),
                MONDAY.plusDays(day),
                LocalTime.of(6, random.nextInt(60)),
                LocalTime.of(15, random.nextInt(60)),
                rests ? LocalTime.of(11, 30) : null,
                rests ? LocalTime.NOON : null,
                maybe(LocalTime.of(17, 0)),
                crew.zone());
    }

    private Map<TravelTimes.Leg, Integer> legs() {
        Map<TravelTimes.Leg, Integer> legs = new HashMap<>();
        for (Site site : sites)
            for (Crew crew : crews)
                if (random.nextBoolean())
                    legs.put(new TravelTimes.Leg(crew.id().value(), site.id().value()), random.nextInt(120));
        return legs;
    }

    private Forecast forecast(Site site, int hours) {
        if (site == sites.getFirst()) return Forecast.none(site.id());
        Instant from = Instant.parse("2026-04-13T07:00:00Z");
        return new Forecast(
                site.id(),
                IntStream.range(0, hours)
                        .mapToObj(h -> new ForecastHour(
                                from.plus(Duration.ofHours(h)),
                                random.nextDouble() * 5,
                                random.nextDouble(),
                                random.nextDouble() * 15,
                                random.nextDouble() * 25,
                                random.nextDouble() * 360,
                                random.nextDouble() * 40 - 15,
                                random.nextDouble() * 100,
                                from.plus(Duration.ofHours(h - h % 6))))
                        .toList());
    }

    private List<LabourRow> labour() {
        List<LabourRow> rows = new ArrayList<>();
        for (Task task : Task.values()) {
            rows.add(labour(task, null));
            rows.add(labour(task, any(Method.values())));
        }
        return rows;
    }

    private LabourRow labour(Task task, @Nullable Method method) {
        return new LabourRow(
                task,
                method,
                new BigDecimal("12.50"),
                new BigDecimal("0.1").movePointLeft(random.nextInt(6)),
                BigDecimal.valueOf(random.nextInt(20)),
                random.nextInt(60),
                random.nextInt(30),
                random.nextInt(15));
    }

    private RuleBook rules() {
        RuleBook book = RuleBook.of(some(Rule.values()));
        Rule[] ofSites = Arrays.stream(Rule.values()).filter(Rule::ofSite).toArray(Rule[]::new);
        Map<SiteId, Rules> own = new HashMap<>();
        for (Site site : sites) if (random.nextInt(3) == 0) own.put(site.id(), some(ofSites));
        return new RuleBook(book.everywhere(), own);
    }

    private Rules some(Rule[] rules) {
        Map<Rule, Double> own = new EnumMap<>(Rule.class);
        for (Rule rule : rules)
            if (random.nextBoolean()) {
                double value = rule.least() + random.nextDouble() * (rule.most() - rule.least());
                own.put(rule, rule.whole() ? Math.rint(value) : value);
            }
        return new Rules(own);
    }

    private List<PublishedVisit> published(List<Opening> openings) {
        return openings.stream()
                .filter(_ -> random.nextInt(4) == 0)
                .map(opening -> new PublishedVisit(visit(opening, random.nextInt(1, 9)), random.nextBoolean()))
                .toList();
    }

    private Visit visit(Opening opening, int sequence) {
        Instant start = moment();
        return new Visit(
                any(crews).id(),
                MONDAY,
                sequence,
                opening.facade(),
                opening.level(),
                opening.id(),
                any(Task.values()),
                start,
                start.plus(Duration.ofMinutes(random.nextInt(10, 300))));
    }

    private Instant moment() {
        return Instant.parse("2026-04-13T07:00:00Z").plusSeconds(random.nextInt(1_000_000));
    }

    private GeoPoint place() {
        return new GeoPoint(random.nextDouble() * 180 - 90, random.nextDouble() * 360 - 180);
    }

    private <T> List<T> shuffled(List<T> list) {
        List<T> copy = new ArrayList<>(list);
        Collections.shuffle(copy, random);
        return copy;
    }

    private <T> T any(List<T> list) {
        return list.get(random.nextInt(list.size()));
    }

    private <T> T any(T[] values) {
        return values[random.nextInt(values.length)];
    }

    private <T> @Nullable T maybe(T value) {
        return random.nextBoolean() ? value : null;
    }
}
