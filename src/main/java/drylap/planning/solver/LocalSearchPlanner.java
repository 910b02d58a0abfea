package drylap.planning.solver;

import drylap.kernel.TimeWindow;
import drylap.planning.JobFolder;
import drylap.planning.Plan;
import drylap.planning.PlanProgress;
import drylap.planning.PlanRequest;
import drylap.planning.Planner;
import drylap.planning.Trail;
import drylap.planning.Waypoint;
import drylap.weather.SiteWeather;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * A legal plan at once by construction, then better ones by local search until time, moves or patience end; a large job region
 * by region, as many at a time as the request has processors, a small one by two searches side by side.
 */
public final class LocalSearchPlanner implements Planner {
    /** Searches of a job that is not cut, whatever the machine has: the same moves give the same plan everywhere. */
    static final int LANES = 2;

    /** How often regions lend each other days, and what part of its time a region may use up at first to find places with them. */
    private static final int ROUNDS = 6;

    private static final double FIRST_PART = 0.3;
    /** From the second round on a day with so few tasks is lent, too, and these have to find another. */
    private static final int FEW_TASKS = 3;

    @Override
    public Plan plan(
            JobFolder folder, PlanRequest request, Trail trail, Consumer<PlanProgress> watcher, BooleanSupplier stop) {
        long began = System.nanoTime();
        Span span = Span.of(folder, request.now());
        if (Regions.mayCut(folder) && request.processors() > 1) reckonSunsMeanwhile(folder, span);
        Waypoint from = trail.from().orElse(null);
        List<JobFolder> cut = Regions.of(folder);
        List<JobFolder> regions = from == null ? cut : Waypoints.regions(cut, folder, from);
        try (Crowd crowd = Crowd.of(regions.size(), request.processors())) {
            List<RegionSearch> searches = begin(crowd, regions, span, from);
            trail.follow(() -> Waypoints.of(searches));
            Report report = new Report(began, watcher, searches);
            report.tell();
            if (worthSearching(searches, request, stop)) search(crowd, searches, request, report, stop);
            report.tell();
            return PlanMerge.of(folder, crowd.each(searches, RegionSearch::plan));
        }
    }

    private static List<RegionSearch> begin(Crowd crowd, List<JobFolder> regions, Span span, @Nullable Waypoint from) {
        List<Integer> numbers = IntStream.range(0, regions.size()).boxed().toList();
        return crowd.each(numbers, number -> {
            RegionSearch search = RegionSearch.begin(regions.get(number), span);
            if (from != null) search.goOn(number, from);
            return search;
        });
    }

    /** A job is cut by one processor: the other one has something to do that all regions ask for. */
    private static void reckonSunsMeanwhile(JobFolder folder, Span span) {
        TimeWindow window = span.window();
        Thread.ofPlatform()
                .daemon()
                .name("plan-suns")
                .start(() -> folder.sites().forEach(site -> SiteWeather.reckonSun(site, window)));
    }

    private static boolean worthSearching(List<RegionSearch> searches, PlanRequest request, BooleanSupplier stop) {
        boolean noTime = request.time() != null && request.time().isZero();
        boolean noMoves = request.moves() != null && request.moves() == 0;
        boolean noUnits = searches.stream().allMatch(search -> search.units() == 0);
        return !noUnits && !noTime && !noMoves && !stop.getAsBoolean();
    }

    private static void search(
            Crowd crowd, List<RegionSearch> all, PlanRequest request, Report report, BooleanSupplier stop) {
        List<RegionSearch> searches = changed(all);
        Thread teller = Thread.ofVirtual().start(report::tellFromTimeToTime);
        try {
            crowd.each(searches, done(search -> search.improveFirst(stop)));
            findPlaces(crowd, searches, request, report, stop);
            Shares shares = new Shares(request, report, searches, crowd.width());
            int lanes = searches.size() == 1 ? LANES : 1;
            crowd.each(searches, done(search -> search.search(shares.of(search), stop, lanes)));
        } finally {
            teller.interrupt();
        }
    }

    /** Where something has no place, regions lend each other days and search for a while, from round to round for longer. */
    private static void findPlaces(
            Crowd crowd, List<RegionSearch> all, PlanRequest request, Report report, BooleanSupplier stop) {
        double part = FIRST_PART;
        for (int round = 0;
                round < ROUNDS && Lending.among(all, round == 0 ? 0 : FEW_TASKS) && !stop.getAsBoolean();
                round++) {
            Shares shares = new Shares(request, report, all, crowd.width()).ofRound(round, part);
            List<RegionSearch> lacking =
                    all.stream().filter(search -> search.medium() > 0).toList();
            crowd.each(lacking, done(search -> search.search(shares.of(search), stop, 1)));
            part *= 2;
        }
    }

    /** Where something changed in part of a published plan, the rest stays; where nothing did, all may get better. */
    private static List<RegionSearch> changed(List<RegionSearch> all) {
        List<RegionSearch> changed =
                all.stream().filter(search -> !search.asPublished()).toList();
        return changed.isEmpty() ? all : changed;
    }

    private static Function<RegionSearch, RegionSearch> done(Consumer<RegionSearch> action) {
        return search -> {
            action.accept(search);
            return search;
        };
    }
}
