package drylap.bench;

import drylap.kernel.FacadeId;
import drylap.kernel.GeoPoint;
import drylap.kernel.Rules;
import drylap.kernel.SiteId;
import drylap.kernel.Task;
import drylap.kernel.TimeWindow;
import drylap.sites.Facade;
import drylap.sites.Site;
import drylap.sites.Terrain;
import drylap.weather.Forecast;
import drylap.weather.ForecastHour;
import drylap.weather.SiteWeather;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** The weather of a job of some 3,000 openings: 60 facades of 10 sites, all tasks, 21 days, 10 of them forecast. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class OpenHoursBenchmark {
    private static final ZoneId ZONE = ZoneId.of("America/Los_Angeles");
    private static final Instant START = Instant.parse("2026-04-13T07:00:00Z");
    private static final TimeWindow SPAN = new TimeWindow(START, START.plus(Duration.ofDays(21)));

    private List<Site> sites = List.of();
    private List<Forecast> forecasts = List.of();
    private SiteWeather first = weather(site(0), Forecast.none(site(0).id()));

    @Setup
    public void foretell() {
        Random random = new Random(1);
        sites = IntStream.range(0, 10).mapToObj(OpenHoursBenchmark::site).toList();
        forecasts = sites.stream().map(site -> forecast(site, random)).toList();
        first = weather(sites.getFirst(), forecasts.getFirst());
    }

    @Benchmark
    public int openHoursOfAJob() {
        int windows = 0;
        for (int i = 0; i < sites.size(); i++) {
            SiteWeather weather = weather(sites.get(i), forecasts.get(i));
            for (int wall = 0; wall < 6; wall++) windows += windows(weather, sites.get(i), 60 * wall);
        }
        return windows;
    }

    @Benchmark
    @OutputTimeUnit(TimeUnit.NANOSECONDS)
    public double chanceOfRainInThreeHours() {
        return first.chanceOfRain(START.plusSeconds(200_000), START.plusSeconds(210_000));
    }

    private static int windows(SiteWeather weather, Site site, double azimuth) {
        var open = weather.openHours(new Facade(new FacadeId(site.id(), "wall"), azimuth, null));
        int windows = 0;
        for (Task task : Task.values()) windows += open.windows(task).size();
        return windows;
    }

    private static SiteWeather weather(Site site, Forecast forecast) {
        return SiteWeather.of(site, forecast, Rules.STANDARD, SPAN);
    }

    private static Site site(int number) {
        return new Site(new SiteId("s" + number), "Site", new GeoPoint(47 + number / 10.0, -122), ZONE, Terrain.III);
    }

    /** A wet day in three. */
    private static Forecast forecast(Site site, Random random) {
        return new Forecast(
                site.id(),
                IntStream.range(0, 240)
                        .mapToObj(i -> new ForecastHour(
                                START.plus(Duration.ofHours(i)),
                                i / 24 % 3 == 0 ? 2 * random.nextDouble() : 0,
                                random.nextDouble(),
                                8 * random.nextDouble(),
                                12 * random.nextDouble(),
                                360 * random.nextDouble(),
                                3 + 10 * random.nextDouble(),
                                80))
                        .toList());
    }
}
