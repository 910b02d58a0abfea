package drylap.takeoff;

import drylap.kernel.CrewId;
import drylap.kernel.OpeningId;
import drylap.kernel.Rule;
import drylap.kernel.Rules;
import drylap.kernel.Task;
import drylap.planning.JobFolder;
import drylap.planning.Plan;
import drylap.planning.Visit;
import drylap.sites.Opening;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.ToIntFunction;
import java.util.stream.Collectors;

/** Takes off what installs need by the dimension rules of the trade; the maker's instructions come before all of it. */
public final class TakeOff {
    private static final double MM_PER_M = 1_000;

    private record Day(LocalDate date, CrewId crew) {
        static Day of(Visit visit) {
            return new Day(visit.date(), visit.crew());
        }
    }

    private final JobFolder folder;
    private final Map<OpeningId, Opening> openings;

    private TakeOff(JobFolder folder) {
        this.folder = folder;
        openings = folder.openings().stream().collect(Collectors.toMap(Opening::id, Function.identity()));
    }

    /** What the lines that are left at an opening take. */
    public static OpeningTakeOff of(Opening opening, Rules rules) {
        return Reckoning.of(opening, rules);
    }

    /**
     * A list for each day of each window crew, by date and crew.
     *
     * @throws IllegalArgumentException where a strip is longer than a roll, or the plan visits what the folder has not
     */
    public static List<VanList> ofPlan(JobFolder folder, Plan plan) {
        return of(folder, plan, _ -> true);
    }

    /**
     * What a crew loads for one day; nothing where it installs nothing.
     *
     * @throws IllegalArgumentException as {@link #ofPlan}
     */
    public static Optional<VanList> ofDay(JobFolder folder, Plan plan, CrewId crew, LocalDate date) {
        Day day = new Day(date, crew);
        return of(folder, plan, day::equals).stream().findFirst();
    }

    private static List<VanList> of(JobFolder folder, Plan plan, Predicate<Day> wanted) {
        Map<Day, List<Visit>> days =
                new TreeMap<>(Comparator.comparing(Day::date).thenComparing(Day::crew));
        plan.visits().stream()
                .filter(visit -> visit.task() == Task.INSTALL && wanted.test(Day.of(visit)))
                .sorted(Comparator.comparing(Visit::start))
                .forEach(visit -> days.computeIfAbsent(Day.of(visit), _ -> new ArrayList<>())
                        .add(visit));
        TakeOff takeOff = new TakeOff(folder);
        return days.entrySet().stream()
                .map(day -> takeOff.vanList(day.getKey(), day.getValue()))
                .toList();
    }

    private VanList vanList(Day day, List<Visit> visits) {
        List<OpeningTakeOff> all = visits.stream().map(this::opening).toList();
        List<Strip> strips = all.stream().flatMap(one -> one.strips().stream()).toList();
        return new VanList(
                day.crew(),
                day.date(),
                all,
                lengths(strips),
                sum(all, OpeningTakeOff::panCorners),
                cartridges(all),
                sum(all, OpeningTakeOff::fasteners),
                sum(all, OpeningTakeOff::windows),
                cuts(strips));
    }

    private OpeningTakeOff opening(Visit visit) {
        Opening opening = openings.get(visit.opening());
        if (opening == null)
            throw new IllegalArgumentException(
                    "the plan visits %s, which is no opening of the job folder".formatted(visit.opening()));
        return of(opening, folder.rules().at(opening.facade().site()));
    }

    private static Map<Strip.Kind, Double> lengths(List<Strip> strips) {
        Map<Strip.Kind, Double> lengths = new EnumMap<>(Strip.Kind.class);
        strips.forEach(strip -> lengths.merge(strip.kind(), strip.lengthMm(), Double::sum));
        return lengths;
    }

    private static int sum(List<OpeningTakeOff> all, ToIntFunction<OpeningTakeOff> count) {
        return all.stream().mapToInt(count).sum();
    }

    private int cartridges(List<OpeningTakeOff> all) {
        Rules rules = folder.rules().everywhere();
        double millilitres =
                all.stream().mapToDouble(OpeningTakeOff::sealantMl).sum() * (1 + rules.value(Rule.TAKE_OFF_WASTE));
        return (int) Math.ceil(millilitres / rules.value(Rule.CARTRIDGE_ML));
    }

    private record Stock(boolean pan, double widthMm) {
        static Stock of(Strip strip) {
            return new Stock(strip.kind() == Strip.Kind.PAN, strip.widthMm());
        }
    }

    /** Strips of one width come from the same rolls, but for pans, whose stuff is another. */
    private List<CutList> cuts(List<Strip> strips) {
        double rollMm = folder.rules().everywhere().value(Rule.STRIP_ROLL_M) * MM_PER_M;
        Map<Stock, List<Strip>> stocks = strips.stream()
                .collect(Collectors.groupingBy(
                        Stock::of,
                        () -> new TreeMap<>(Comparator.comparing(Stock::pan).thenComparing(Stock::widthMm)),
                        Collectors.toList()));
        return stocks.entrySet().stream()
                .map(stock -> CutList.of(stock.getKey().pan(), stock.getKey().widthMm(), rollMm, stock.getValue()))
                .toList();
    }
}
