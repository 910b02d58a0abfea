package drylap.intake;

import drylap.assembly.Approach;
import drylap.assembly.Frame;
import drylap.assembly.Method;
import drylap.assembly.SecondLayer;
import drylap.assembly.StepList;
import drylap.crews.Crew;
import drylap.crews.Shift;
import drylap.crews.TravelTimes;
import drylap.crews.TravelTimes.Leg;
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
import drylap.planning.PublishedVisit;
import drylap.planning.Visit;
import drylap.sites.Facade;
import drylap.sites.Opening;
import drylap.sites.Site;
import drylap.sites.StreetAddress;
import drylap.sites.Terrain;
import drylap.weather.Forecast;
import drylap.weather.ForecastHour;
import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;

/** A sound folder of random cells; its own dice, so that it owes nothing to the generator for trials. */
final class InventedFolder {
    private static final List<ZoneId> ZONES = List.of(
            ZoneId.of("America/Los_Angeles"),
            ZoneId.of("UTC"),
            ZoneId.of("Asia/Kathmandu"),
            ZoneId.of("Pacific/Chatham"),
            ZoneId.of("America/St_Johns"));
    private static final String ODD = ",\";'#=|\\/äß港 x1";

    private final Random random;
    private final List<Site> sites = new ArrayList<>();
    private final List<Facade> facades = new ArrayList<>();
    private final List<Opening> openings = new ArrayList<>();
    private final List<Crew> crews = new ArrayList<>();
    private List<Shift> shifts = List.of();

    InventedFolder(long seed) {
        random = new Random(seed);
    }

    JobFolder folder() {
        for (int i = 0; i < 1 + random.nextInt(3); i++) sites.add(site(i));
        for (Site site : sites) for (int i = 0; i < 1 + random.nextInt(3); i++) facades.add(facade(site, i));
        for (int i = 0; i < 1 + random.nextInt(12); i++) openings.add(opening(i));
        for (Trade trade : Trade.values()) crews.add(crew(trade));
        shifts = crews.stream().flatMap(this::shifts).toList();
        return new JobFolder(
                sites, facades, openings, crews, shifts, travel(), forecasts(), labour(), rules(), published());
    }

    private Site site(int i) {
        var address = random.nextBoolean() ? StreetAddress.NONE : new StreetAddress(List.of(line(), line()));
        return new Site(new SiteId(odd() + i), odd() + " house", place(), pick(ZONES), pick(Terrain.values()), address);
    }

    private Facade facade(Site site, int i) {
        return new Facade(new FacadeId(site.id(), odd() + i), number(360), random.nextBoolean() ? null : date());
    }

    private Opening opening(int i) {
        Method method = pick(Method.values());
        Approach approach = pick(Approach.values());
        int done = random.nextBoolean()
                ? 0
                : random.nextInt(StepList.of(method, approach).last() + 1);
        return new Opening(
                new OpeningId(odd() + i),
                pick(facades).id(),
                1 + random.nextInt(200),
                100 + random.nextInt(19_901),
                100 + random.nextInt(19_901),
                pick(Frame.values()),
                method,
                approach,
                pick(SecondLayer.values()),
                date(),
                random.nextBoolean(),
                random.nextInt(101),
                done,
                done == 0 || random.nextBoolean() ? null : instant(),
                random.nextBoolean() ? EnumSet.of(Task.TEST, Task.CLAD) : EnumSet.noneOf(Task.class));
    }

    private Crew crew(Trade trade) {
        Set<Method> methods = EnumSet.noneOf(Method.class);
        for (Method method : Method.values()) if (random.nextBoolean()) methods.add(method);
        Integer people = random.nextBoolean() ? null : 1 + random.nextInt(20);
        return new Crew(new CrewId("C" + odd() + trade), trade, methods, place(), pick(ZONES), people);
    }

    private java.util.stream.Stream<Shift> shifts(Crew crew) {
        LocalDate first = date();
        return java.util.stream.IntStream.range(0, 1 + random.nextInt(4)).mapToObj(i -> {
            LocalTime start = LocalTime.of(5 + random.nextInt(4), random.nextInt(60));
            LocalTime end = LocalTime.of(14 + random.nextInt(4), random.nextInt(60));
            boolean pause = random.nextBoolean();
            return new Shift(
                    crew.id(),
                    first.plusDays(i),
                    start,
                    end,
                    pause ? LocalTime.of(11, 5) : null,
                    pause ? LocalTime.of(11, 40) : null,
                    random.nextBoolean() ? end.plusHours(random.nextInt(4)) : null,
                    crew.zone());
        });
    }

    private TravelTimes travel() {
        Map<Leg, Integer> legs = new java.util.HashMap<>();
        for (Site site : sites)
            for (Crew crew : crews)
                if (random.nextBoolean())
                    legs.put(new Leg(crew.id().value(), site.id().value()), random.nextInt(10_001));
        return new TravelTimes(legs);
    }

    private List<Forecast> forecasts() {
        return sites.stream().map(this::forecast).toList();
    }

    private Forecast forecast(Site site) {
        Instant first = instant();
        List<ForecastHour> hours = new ArrayList<>();
        for (int h = 0; h < random.nextInt(40); h++) {
            Instant start = first.plusSeconds(3600L * h);
            boolean shared = h > 0 && random.nextInt(3) == 0;
            hours.add(new ForecastHour(
                    start,
                    number(500),
                    shared ? hours.getLast().rainProbability() : random.nextDouble(),
                    number(150),
                    number(150),
                    number(360),
                    number(160) - 90,
                    number(100),
                    shared ? hours.getLast().chanceFrom() : start));
        }
        return new Forecast(site.id(), hours);
    }

    private LabourTable labour() {
        List<LabourRow> rows = new ArrayList<>();
        for (Task task : Task.values()) {
            rows.add(labour(task, null));
            for (Method method : Method.values()) if (random.nextBoolean()) rows.add(labour(task, method));
        }
        return new LabourTable(rows);
    }

    private LabourRow labour(Task task, @org.jspecify.annotations.Nullable Method method) {
        return new LabourRow(
                task,
                method,
                BigDecimal.valueOf(1 + random.nextInt(9_999), random.nextInt(5)),
                BigDecimal.valueOf(random.nextInt(99_999), 1 + random.nextInt(12)),
                BigDecimal.valueOf(random.nextInt(100)),
                random.nextInt(100),
                random.nextInt(100),
                random.nextInt(100));
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
            if (random.nextInt(3) == 0) {
                double value = rule.least() + random.nextDouble() * (rule.most() - rule.least());
                own.put(rule, rule.whole() ? Math.rint(value) : value);
            }
        return new Rules(own);
    }

    private List<PublishedVisit> published() {
        List<PublishedVisit> visits = new ArrayList<>();
        for (Opening opening : openings)
            for (Task task : opening.designedTasks()) if (random.nextInt(3) == 0) visits.add(visit(opening, task));
        return visits;
    }

    private PublishedVisit visit(Opening opening, Task task) {
        Crew crew = crews.stream()
                .filter(each -> each.trade() == task.trade())
                .findFirst()
                .orElseThrow();
        boolean pinned = random.nextBoolean();
        Instant start = pinned ? onShift(crew) : instant();
        Visit visit = new Visit(
                crew.id(),
                start.atZone(crew.zone()).toLocalDate(),
                1 + random.nextInt(20),
                opening.facade(),
                opening.level(),
                opening.id(),
                task,
                start,
                start.plusSeconds(60L * (1 + random.nextInt(240))));
        return new PublishedVisit(visit, pinned);
    }

    /** Early enough for any visit to end within the shift. */
    private Instant onShift(Crew crew) {
        Shift shift = shifts.stream()
                .filter(each -> each.crew().equals(crew.id()))
                .findFirst()
                .orElseThrow();
        return shift.startsAt().plusSeconds(random.nextInt(600));
    }

    /** Starts and ends with a letter, as names must. */
    private String odd() {
        StringBuilder name = new StringBuilder("o");
        for (int i = 0; i < random.nextInt(6); i++) name.append(ODD.charAt(random.nextInt(ODD.length())));
        return name.append('z').toString();
    }

    /** What parts lines is in none of them. */
    private String line() {
        return odd().replace(";", "").replaceAll(" +", " ");
    }

    private GeoPoint place() {
        return new GeoPoint(number(180) - 90, number(360) - 180);
    }

    private double number(int most) {
        return switch (random.nextInt(4)) {
            case 0 -> random.nextInt(most);
            case 1 -> random.nextDouble() * most;
            case 2 -> random.nextDouble() * 1e-9;
            default -> random.nextInt(most * 10) / 10.0;
        };
    }

    private LocalDate date() {
        return LocalDate.of(2000 + random.nextInt(99), 1 + random.nextInt(12), 1 + random.nextInt(28));
    }

    /** From the second day of 2000, so that the year is within what is accepted at every offset. */
    private Instant instant() {
        long whole = (date().toEpochDay() + 1) * 86_400 + 60L * random.nextInt(1440);
        return switch (random.nextInt(4)) {
            case 0 -> Instant.ofEpochSecond(whole, random.nextInt(1_000_000_000));
            case 1 -> Instant.ofEpochSecond(whole + random.nextInt(60));
            default -> Instant.ofEpochSecond(whole);
        };
    }

    private <T> T pick(List<T> from) {
        return from.get(random.nextInt(from.size()));
    }

    private <T> T pick(T[] from) {
        return pick(Arrays.asList(from));
    }
}
