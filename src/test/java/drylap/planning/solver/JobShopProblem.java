package drylap.planning.solver;

import drylap.assembly.Approach;
import drylap.assembly.Frame;
import drylap.assembly.Method;
import drylap.assembly.SecondLayer;
import drylap.assembly.StepList;
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
import drylap.planning.LedgerTerm;
import drylap.sites.Facade;
import drylap.sites.Opening;
import drylap.sites.Site;
import drylap.sites.Terrain;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * A {@link JobShop} as work that the planner knows: machines are siding crews, operations openings that are installed already
 * and wait for their cladding, each alone on its level of one wall that was due yesterday. A unit of time is an hour, so that
 * the hours past the due date are what a job shop counts. Compiled like any folder; then three things are done to it that no
 * folder can say: a job's first level lies on nothing, each opening has one crew, and shifts do not end.
 */
final class JobShopProblem {
    private static final int UNIT_MIN = 60;

    /** More than the crews' ends come to in a plan that is any good. */
    static final int END_WEIGHT = 1_000_000;

    /** The sun is up at the pole for so long, and no plan of these job shops needs so long. */
    private static final int DAYS = 170;

    private static final LocalDate FIRST = LocalDate.of(2026, 4, 1);
    private static final ZoneId ZONE = ZoneOffset.UTC;
    private static final GeoPoint POLE = new GeoPoint(90, 0);
    private static final SiteId SITE = new SiteId("shop");
    private static final FacadeId WALL = new FacadeId(SITE, "wall");

    private final JobShop shop;

    private JobShopProblem(JobShop shop) {
        this.shop = shop;
    }

    static Problem of(JobShop shop) {
        return new JobShopProblem(shop).problem();
    }

    private Problem problem() {
        JobFolder folder = folder();
        int end = DAYS * 24 * 60;
        Problem whole =
                ProblemCompiler.compile(folder, new Span(Span.of(folder, null).axis(), end));
        for (CourseWork course : whole.courses()) if (place(course) == 0) course.cladsAbove = null;
        for (CrewCalendar crew : whole.crews()) {
            Arrays.fill(crew.end, 0);
            Arrays.fill(crew.limit, end);
        }
        List<Unit> units = whole.units().stream().map(this::onItsMachine).toList();
        return with(whole, units);
    }

    private int job(CourseWork course) {
        return (course.course.level() - 1) / shop.machines();
    }

    private int place(CourseWork course) {
        return (course.course.level() - 1) % shop.machines();
    }

    private int machine(Unit unit) {
        return shop.operation(job(unit.course), place(unit.course)).machine();
    }

    private Unit onItsMachine(Unit unit) {
        BitSet crew = new BitSet();
        crew.set(machine(unit));
        return new Unit(unit.index, List.of(unit.tasks), crew);
    }

    /** Related is what shares a machine: beside that a unit may go. */
    private Problem with(Problem whole, List<Unit> units) {
        List<List<Unit>> related = units.stream()
                .map(unit -> units.stream()
                        .filter(other -> machine(other) == machine(unit))
                        .toList())
                .toList();
        return new Problem(
                whole.folder(),
                whole.axis(),
                whole.horizonEnd(),
                whole.sites(),
                whole.facades(),
                whole.courses(),
                whole.tasks(),
                whole.never(),
                units,
                whole.crews(),
                whole.travel(),
                whole.openWindows(),
                whole.unitsByKindAndCourse(),
                whole.crewsByKind(),
                new Problem.Kinship(related, related, Problem.Kinship.of(units).ofKind()),
                whole.weights(),
                whole.limitsOfSites(),
                whole.dryHours());
    }

    private JobFolder folder() {
        List<Crew> crews = IntStream.range(0, shop.machines())
                .mapToObj(machine -> new Crew(new CrewId("machine-" + machine), Trade.SIDING, Set.of(), POLE, ZONE))
                .toList();
        return new JobFolder(
                List.of(new Site(SITE, shop.name(), POLE, ZONE, Terrain.III)),
                List.of(new Facade(WALL, 0, FIRST.minusDays(1))),
                openings(),
                crews,
                crews.stream().map(JobShopProblem::shift).toList(),
                new TravelTimes(Map.of()),
                List.of(),
                new LabourTable(List.of(new LabourRow(
                        Task.CLAD, null, BigDecimal.ZERO, BigDecimal.valueOf(UNIT_MIN), BigDecimal.ZERO, 0, 0, 0))),
                rules(),
                List.of());
    }

    private static Shift shift(Crew crew) {
        return new Shift(crew.id(), FIRST, LocalTime.MIDNIGHT, LocalTime.NOON, null, null, null, ZONE);
    }

    /** The end counts, and where that is equal the sum of the crews' ends, as overtime of shifts that are over at once. */
    private static Rules rules() {
        Rules rules = Rules.STANDARD;
        for (LedgerTerm term : LedgerTerm.values()) rules = rules.with(term.weight(), 0);
        return rules.with(Rule.WEIGHT_OVERTIME, 1).with(Rule.WEIGHT_LATE_HANDOVER, END_WEIGHT);
    }

    private List<Opening> openings() {
        List<Opening> openings = new ArrayList<>();
        for (int job = 0; job < shop.jobs().size(); job++)
            for (int place = 0; place < shop.machines(); place++) openings.add(opening(job, place));
        return openings;
    }

    /** As wide as its time is long, in metres, and a metre high. */
    private Opening opening(int job, int place) {
        return new Opening(
                id(job, place),
                WALL,
                job * shop.machines() + place + 1,
                shop.operation(job, place).time() * 1000,
                1000,
                Frame.WOOD,
                Method.B1,
                Approach.BARRIER,
                SecondLayer.NONE,
                FIRST,
                false,
                0,
                StepList.of(Method.B1, Approach.BARRIER).last(),
                null);
    }

    static OpeningId id(int job, int place) {
        return new OpeningId("job-%d-%d".formatted(job, place));
    }
}
