package drylap.takeoff;

import static java.util.stream.Collectors.groupingBy;
import static java.util.stream.Collectors.toList;

import drylap.kernel.CrewId;
import drylap.kernel.FacadeId;
import drylap.kernel.OpeningId;
import drylap.kernel.Rules;
import drylap.kernel.SiteId;
import drylap.kernel.Task;
import drylap.planning.JobFolder;
import drylap.planning.Plan;
import drylap.planning.Visit;
import drylap.sites.Opening;
import drylap.speech.Saying;
import drylap.speech.Unfit;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Takes off what installs need by the dimension rules of the trade; the maker's instructions come before all of it. */
public final class TakeOff {
    private final JobFolder folder;
    private final Map<OpeningId, Opening> openings;

    private TakeOff(JobFolder folder) {
        this.folder = folder;
        openings = folder.openings().stream().collect(Collectors.toMap(Opening::id, Function.identity()));
    }

    private record Day(LocalDate date, CrewId crew) {
        static Day of(Visit visit) {
            return new Day(visit.date(), visit.crew());
        }
    }

    /** What the lines that are left at an opening take. */
    public static OpeningTakeOff of(Opening opening, Rules rules) {
        return Reckoning.of(opening, rules);
    }

    /**
     * What is loaded for each day of each window crew, by date and crew.
     *
     * @param wanted which visits are looked at; only of days that are asked for the strips are cut
     * @throws IllegalArgumentException where the plan visits what the folder has not
     */
    public static List<VanList> ofPlan(JobFolder folder, Plan plan, Predicate<Visit> wanted) {
        TakeOff takeOff = new TakeOff(folder);
        Map<Day, List<Visit>> days = installs(plan, wanted)
                .collect(groupingBy(
                        Day::of,
                        () -> new TreeMap<>(Comparator.comparing(Day::date).thenComparing(Day::crew)),
                        toList()));
        return days.entrySet().stream()
                .map(day -> new VanList(
                        day.getKey().crew(), day.getKey().date(), takeOff.supplies(takeOff.visited(day.getValue()))))
                .toList();
    }

    /**
     * What a crew loads for one day; nothing where it installs nothing.
     *
     * @throws IllegalArgumentException as {@link #ofPlan}
     */
    public static Optional<VanList> ofDay(JobFolder folder, Plan plan, CrewId crew, LocalDate date) {
        Day day = new Day(date, crew);
        return ofPlan(folder, plan, visit -> Day.of(visit).equals(day)).stream().findFirst();
    }

    /**
     * What all window crews together load for each day.
     *
     * @throws IllegalArgumentException as {@link #ofPlan}
     */
    public static List<DayList> ofDates(JobFolder folder, Plan plan, Predicate<LocalDate> wanted) {
        TakeOff takeOff = new TakeOff(folder);
        Map<LocalDate, List<Visit>> days = installs(plan, visit -> wanted.test(visit.date()))
                .collect(groupingBy(Visit::date, TreeMap::new, toList()));
        return days.entrySet().stream()
                .map(day -> takeOff.dayList(day.getKey(), day.getValue()))
                .toList();
    }

    /**
     * What the installs among some visits take together.
     *
     * @throws IllegalArgumentException as {@link #ofPlan}
     */
    public static Sums ofVisits(JobFolder folder, List<Visit> visits) {
        TakeOff takeOff = new TakeOff(folder);
        return takeOff.sums(visits.stream()
                .filter(visit -> visit.task() == Task.INSTALL)
                .map(takeOff::visited)
                .toList());
    }

    /** The days on which something is put on that is not on yet. */
    public static Set<LocalDate> dates(JobFolder folder, Plan plan) {
        Set<OpeningId> done = folder.openings().stream()
                .filter(Opening::installed)
                .map(Opening::id)
                .collect(Collectors.toSet());
        return installs(plan, visit -> !done.contains(visit.opening()))
                .map(Visit::date)
                .collect(Collectors.toCollection(TreeSet::new));
    }

    /** What a site of the folder takes; all of it, or what is not on yet. */
    public static SiteList ofSite(JobFolder folder, SiteId site, Extent extent) {
        TakeOff takeOff = new TakeOff(folder);
        List<Opening> all = folder.openings().stream()
                .filter(opening -> opening.facade().site().equals(site))
                .map(opening -> extent == Extent.WHOLE ? opening.standing(0, null, Set.of()) : opening)
                .toList();
        Map<FacadeId, List<Opening>> walls =
                all.stream().collect(groupingBy(Opening::facade, LinkedHashMap::new, toList()));
        Map<FacadeId, Sums> sums = new LinkedHashMap<>();
        walls.forEach((wall, of) -> sums.put(wall, takeOff.sums(of)));
        return new SiteList(site, extent, sums, takeOff.supplies(all));
    }

    private static Stream<Visit> installs(Plan plan, Predicate<Visit> wanted) {
        return plan.visits().stream()
                .filter(visit -> visit.task() == Task.INSTALL && wanted.test(visit))
                .sorted(Comparator.comparing(Visit::start));
    }

    private DayList dayList(LocalDate date, List<Visit> visits) {
        Map<CrewId, Sums> crews = new TreeMap<>();
        visits.stream().collect(groupingBy(Visit::crew)).forEach((crew, of) -> crews.put(crew, sums(visited(of))));
        return new DayList(date, crews, supplies(visited(visits)));
    }

    private List<Opening> visited(List<Visit> visits) {
        return visits.stream().map(this::visited).toList();
    }

    private Opening visited(Visit visit) {
        Opening opening = openings.get(visit.opening());
        if (opening == null)
            throw new Unfit(Saying.of("the plan visits {0}, which is no opening of the job folder", visit.opening()));
        return opening;
    }

    private Supplies supplies(List<Opening> all) {
        return Supplies.of(takeOffs(all), stock(all));
    }

    private Sums sums(List<Opening> all) {
        return Sums.of(takeOffs(all), stock(all));
    }

    private List<OpeningTakeOff> takeOffs(List<Opening> all) {
        return all.stream()
                .map(opening -> of(opening, folder.rules().at(opening.facade().site())))
                .toList();
    }

    /** Rolls and cartridges are those of the site; where several share them, those that hold everywhere. */
    private Rules stock(List<Opening> all) {
        List<SiteId> sites =
                all.stream().map(opening -> opening.facade().site()).distinct().toList();
        return sites.size() == 1
                ? folder.rules().at(sites.getFirst())
                : folder.rules().everywhere();
    }
}
