package drylap.planning.solver;

import drylap.intake.GeneratedFolder;
import drylap.kernel.OpeningId;
import drylap.kernel.Task;
import drylap.planning.JobFolder;
import drylap.planning.OpenWindow;
import drylap.planning.Plan;
import drylap.planning.PlanRequest;
import drylap.planning.Planner;
import drylap.planning.PublishedVisit;
import drylap.planning.Visit;
import drylap.weather.Forecast;
import drylap.weather.ForecastHour;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/**
 * A published plan of 3,000 openings planned again after thirty hours of rain are forecast for a third of the sites: how soon it
 * is legal again, and how much of what the rain does not touch keeps its crew and day.
 */
public final class ReplanBench {
    private static final int OPENINGS = 3_000;
    private static final int PLANNED_S = 10;
    private static final int POLISHED_S = 5;
    private static final Duration UNTIL_RAIN = Duration.ofDays(8);
    private static final Duration RAIN = Duration.ofHours(30);
    private static final int WARM_UPS = 12;
    private static final double LEGAL_MS = 20;
    private static final double KEPT_PERCENT = 95;

    private record Done(OpeningId opening, Task task) {
        static Done of(Visit visit) {
            return new Done(visit.opening(), visit.task());
        }
    }

    /** Milliseconds. */
    private record Times(double openHours, double legal) {}

    private ReplanBench() {}

    /** Prints a row for each of three jobs; whether all were legal in time and kept enough. */
    public static boolean run() {
        System.out.println(
                "| Seed | Visits | Touched by rain | Open hours, ms | Legal after that, ms | Kept at first, % | "
                        + "Kept after 5 s, % | Out at first | Out after 5 s |");
        System.out.println("|---:|---:|---:|---:|---:|---:|---:|---:|---:|");
        boolean fine = true;
        for (int seed = 1; seed <= 3; seed++) fine &= row(seed);
        return fine;
    }

    private static boolean row(int seed) {
        JobFolder job = GeneratedFolder.of(OPENINGS, GeneratedFolder.usualSites(OPENINGS), seed);
        Plan published = plan(job, PLANNED_S);
        JobFolder rained = rained(job, published);
        Times times = times(rained);
        for (int i = 0; i < WARM_UPS; i++) times = times(rained);
        Plan first = plan(rained, 0);
        Plan polished = plan(rained, POLISHED_S);
        List<Visit> untouched =
                published.visits().stream().filter(open(first.openHours())).toList();
        double kept = keptPercent(untouched, polished);
        System.out.printf(
                Locale.ROOT,
                "| %d | %,d | %,d | %.0f | %.0f | %.1f | %.1f | %d | %d |%n",
                seed,
                published.visits().size(),
                published.visits().size() - untouched.size(),
                times.openHours,
                times.legal,
                keptPercent(untouched, first),
                kept,
                first.unplanned().size(),
                polished.unplanned().size());
        return times.legal <= LEGAL_MS && kept >= KEPT_PERCENT;
    }

    private static Plan plan(JobFolder folder, int seconds) {
        return Planner.standard()
                .plan(folder, new PlanRequest(null, Duration.ofSeconds(seconds), null, 1), _ -> {}, () -> false);
    }

    /** As the planner does it: cut, each region compiled with its open hours, then each decoded, on all processors. */
    private static Times times(JobFolder folder) {
        long began = System.nanoTime();
        Span span = Span.of(folder, null);
        List<JobFolder> regions = Regions.of(folder);
        try (Crowd crowd = Crowd.of(regions.size(), Runtime.getRuntime().availableProcessors())) {
            List<Problem> problems = crowd.each(regions, region -> ProblemCompiler.compile(region, span));
            long open = System.nanoTime();
            crowd.each(problems, problem -> Construction.firstLists(problem, new Meter()));
            return new Times((open - began) / 1e6, (System.nanoTime() - open) / 1e6);
        }
    }

    private static double keptPercent(List<Visit> untouched, Plan now) {
        Map<Done, Visit> visits = now.visits().stream().collect(Collectors.toMap(Done::of, Function.identity()));
        long kept = untouched.stream()
                .filter(was -> {
                    Visit is = visits.get(Done.of(was));
                    return is != null
                            && is.crew().equals(was.crew())
                            && is.date().equals(was.date());
                })
                .count();
        return 100.0 * kept / untouched.size();
    }

    /** Whether all of a visit is still in open hours. */
    private static Predicate<Visit> open(List<OpenWindow> windows) {
        var walls = windows.stream().collect(Collectors.groupingBy(window -> List.of(window.facade(), window.task())));
        return visit -> walls.getOrDefault(List.of(visit.facade(), visit.task()), List.of()).stream()
                .anyMatch(window -> !window.when().from().isAfter(visit.start())
                        && !window.when().until().isBefore(visit.end()));
    }

    private static JobFolder rained(JobFolder job, Plan published) {
        Instant from = published.start().plus(UNTIL_RAIN);
        List<Forecast> forecasts = new ArrayList<>();
        for (Forecast forecast : job.forecasts())
            forecasts.add(forecasts.size() % 3 == 0 ? rain(forecast, from, from.plus(RAIN)) : forecast);
        return job.withForecasts(forecasts)
                .withPublished(published.visits().stream()
                        .map(visit -> new PublishedVisit(visit, false))
                        .toList());
    }

    private static Forecast rain(Forecast forecast, Instant from, Instant until) {
        return new Forecast(
                forecast.site(),
                forecast.hours().stream()
                        .map(hour ->
                                hour.start().isBefore(from) || !hour.start().isBefore(until) ? hour : wet(hour))
                        .toList());
    }

    private static ForecastHour wet(ForecastHour hour) {
        return new ForecastHour(
                hour.start(),
                2.0,
                0.8,
                hour.windMs(),
                hour.gustMs(),
                hour.windFromDeg(),
                hour.temperatureC(),
                hour.relativeHumidity());
    }
}
