package drylap.risk;

import drylap.climate.MonthlyNormals;
import drylap.intake.FolderReader;
import drylap.intake.FolderReading;
import drylap.intake.FolderSource;
import drylap.kernel.Rule;
import drylap.kernel.RuleBook;
import drylap.planning.JobFolder;
import drylap.planning.Plan;
import drylap.planning.PlanRequest;
import drylap.planning.Planner;
import drylap.weather.Forecast;
import drylap.weather.ForecastHour;
import java.nio.file.Path;
import java.util.List;

/** The sample week with its first legal plan. */
record Demo(JobFolder folder, Plan plan) {
    private static final JobFolder WEEK = read();
    static final Demo RAINY = new Demo(WEEK, first(WEEK));
    static final Demo DRY = dry();

    private static JobFolder read() {
        return switch (FolderReader.read(FolderSource.of(Path.of("sample-data/harbour-week")))) {
            case FolderReading.Read read -> read.folder();
            case FolderReading.Refused refused -> throw new IllegalStateException(refused.text());
        };
    }

    static Plan first(JobFolder folder) {
        return Planner.standard().plan(folder, new PlanRequest(null, null, 0L, 1), _ -> {}, () -> true);
    }

    private static Demo dry() {
        JobFolder folder = WEEK.withForecasts(
                        WEEK.forecasts().stream().map(Demo::withoutRain).toList())
                .withRules(certain(WEEK.rules()));
        return new Demo(folder, first(folder));
    }

    static Forecast withoutRain(Forecast forecast) {
        return new Forecast(
                forecast.site(),
                forecast.hours().stream().map(Demo::withoutRain).toList());
    }

    private static ForecastHour withoutRain(ForecastHour hour) {
        return new ForecastHour(
                hour.start(),
                0,
                0,
                hour.windMs(),
                hour.gustMs(),
                hour.windFromDeg(),
                hour.temperatureC(),
                hour.relativeHumidity());
    }

    /** No spread of work and deliveries. */
    static RuleBook certain(RuleBook rules) {
        return rules.with(null, Rule.DURATION_BEST, 1)
                .with(null, Rule.DURATION_WORST, 1)
                .with(null, Rule.DELIVERY_WORST_DAYS, 0);
    }

    /** Months in which it never rains. */
    static List<MonthlyNormals> desert() {
        return java.util.stream.IntStream.rangeClosed(1, 12)
                .mapToObj(month -> new MonthlyNormals(null, month, 0, 0))
                .toList();
    }

    JobBook book() {
        return new JobBook(folder, plan.visits(), plan.start(), desert());
    }
}
