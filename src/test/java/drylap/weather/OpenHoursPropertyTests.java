package drylap.weather;

import static org.assertj.core.api.Assertions.assertThat;

import drylap.kernel.FacadeId;
import drylap.kernel.GeoPoint;
import drylap.kernel.Rule;
import drylap.kernel.Rules;
import drylap.kernel.SiteId;
import drylap.kernel.Task;
import drylap.kernel.TimeWindow;
import drylap.sites.Facade;
import drylap.sites.Site;
import drylap.sites.Terrain;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.Tuple;

/** The module against the oracle over random weather and rules, on quiet days, on days of a clock change and near the pole. */
class OpenHoursPropertyTests {
    record Case(Site site, Facade facade, TimeWindow span, Forecast forecast, Rules rules) {
        SiteWeather weather() {
            return SiteWeather.of(site, forecast, rules, span);
        }

        MinuteByMinute oracle() {
            return new MinuteByMinute(site, forecast, rules);
        }
    }

    @Property
    void windows_are_those_of_a_walk_minute_by_minute(@ForAll("cases") Case any) {
        for (Task task : Task.values())
            assertThat(any.weather().openHours(any.facade()).windows(task))
                    .as("%s", task)
                    .isEqualTo(any.oracle().open(any.facade(), task, any.span()));
    }

    @Property
    void rain_and_dark_are_those_of_a_walk_minute_by_minute(@ForAll("cases") Case any) {
        assertThat(any.weather().raining()).isEqualTo(any.oracle().raining(any.span()));
        assertThat(any.weather().dark()).isEqualTo(any.oracle().dark(any.span()));
    }

    @Property
    void a_stretch_fits_a_window_exactly_when_the_contract_lets_it_run(
            @ForAll("cases") Case any, @ForAll Random random) {
        var windows = any.weather().openHours(any.facade()).windows(Task.INSTALL);
        int minutes = (int) any.span().length().toMinutes();
        for (int trial = 0; trial < 60; trial++) {
            Instant from = any.span().from().plusSeconds(60L * random.nextInt(minutes));
            Instant until = from.plusSeconds(60L * (1 + random.nextInt(180)));
            if (until.isAfter(any.span().until())) continue;
            assertThat(windows.stream().anyMatch(open -> !from.isBefore(open.from()) && !until.isAfter(open.until())))
                    .as("%s to %s", from, until)
                    .isEqualTo(any.oracle().allows(any.facade(), Task.INSTALL, from, until));
        }
    }

    @Provide
    Arbitrary<Case> cases() {
        return sites().flatMap(site -> Combinators.combine(
                        spans(site),
                        Arbitraries.of(0.0, 37.5, 90.0, 180.0, 225.0, 270.0, 360.0),
                        rules(),
                        lead(),
                        hours())
                .as((span, azimuth, rules, lead, hours) -> new Case(
                        site,
                        new Facade(new FacadeId(site.id(), "any"), azimuth, null),
                        span,
                        new Forecast(site.id(), row(span.from().plus(lead), hours)),
                        rules)));
    }

    private static Arbitrary<Site> sites() {
        return Arbitraries.of(
                site("America/Los_Angeles", 34.05, -118.24),
                site("Asia/Kathmandu", 27.7, 85.3),
                site("Australia/Lord_Howe", -31.55, 159.08),
                site("America/St_Johns", 47.56, -52.71),
                site("Atlantic/Reykjavik", 64.1466, -21.9426),
                site("Europe/Oslo", 69.6492, 18.9553));
    }

    private static Site site(String zone, double latitude, double longitude) {
        return new Site(new SiteId("any"), zone, new GeoPoint(latitude, longitude), ZoneId.of(zone), Terrain.III);
    }

    /** Around both American and both Lord Howe clock changes, the solstices, and the first days of the midnight sun. */
    private static Arbitrary<TimeWindow> spans(Site site) {
        var days = Stream.of(
                        "2026-03-07",
                        "2026-10-31",
                        "2026-04-04",
                        "2026-10-03",
                        "2026-06-20",
                        "2026-12-20",
                        "2026-05-16")
                .map(LocalDate::parse)
                .toList();
        return Combinators.combine(
                        Arbitraries.of(days),
                        Arbitraries.integers().between(0, 1439),
                        Arbitraries.integers().between(1, 3600))
                .as((day, minute, length) -> {
                    Instant from = day.atTime(LocalTime.MIN.plusMinutes(minute))
                            .atZone(site.zone())
                            .toInstant();
                    return new TimeWindow(from, from.plus(Duration.ofMinutes(length)));
                });
    }

    private static Arbitrary<Duration> lead() {
        return Arbitraries.integers()
                .between(-20, 20)
                .flatMap(hour ->
                        Arbitraries.of(0, 1, 15, 30, 59).map(minute -> Duration.ofMinutes(60L * hour + minute)));
    }

    private static Arbitrary<List<ForecastHour>> hours() {
        return Combinators.combine(
                        Arbitraries.frequencyOf(
                                Tuple.of(3, Arbitraries.just(0.0)), Tuple.of(2, Arbitraries.of(0.19, 0.2, 0.5, 8.0))),
                        Arbitraries.of(0.0, 0.29, 0.3, 0.9, 1.0),
                        Arbitraries.of(0.0, 0.4, 3.0, 9.0),
                        Arbitraries.frequencyOf(
                                Tuple.of(4, Arbitraries.just(5.0)),
                                Tuple.of(1, Arbitraries.of(9.0, 9.01, 11.0, 11.01))),
                        Arbitraries.of(0.0, 45.0, 100.0, 180.0, 270.0, 359.0),
                        Arbitraries.frequencyOf(
                                Tuple.of(6, Arbitraries.just(12.0)),
                                Tuple.of(1, Arbitraries.of(-3.0, 0.99, 1.0, 4.39, 4.4))))
                .as((mm, p, wind, gust, from, celsius) ->
                        new ForecastHour(Instant.EPOCH, mm, p, wind, gust, from, celsius, 70))
                .list()
                .ofMinSize(0)
                .ofMaxSize(70);
    }

    private static List<ForecastHour> row(Instant first, List<ForecastHour> hours) {
        return IntStream.range(0, hours.size())
                .mapToObj(i -> {
                    ForecastHour hour = hours.get(i);
                    return new ForecastHour(
                            first.plus(Duration.ofHours(i)),
                            hour.rainMm(),
                            hour.rainProbability(),
                            hour.windMs(),
                            hour.gustMs(),
                            hour.windFromDeg(),
                            hour.temperatureC(),
                            hour.relativeHumidity());
                })
                .toList();
    }

    private static Arbitrary<Rules> rules() {
        return Combinators.combine(
                        Arbitraries.of(0.0, 0.05, 0.3, 1.0),
                        Arbitraries.of(0.0, 0.5, 1.0, 2.5, 3.0, 7.0),
                        Arbitraries.of(0.0, 12.5, 30.0, 75.0, 600.0),
                        Arbitraries.of(0.0, 30.0, 45.5, 240.0))
                .as((wetting, drying, skin, dusk) -> Rules.STANDARD
                        .with(Rule.WETTING, wetting)
                        .with(Rule.DRYING_H, drying)
                        .with(Rule.SKIN_MIN, skin)
                        .with(Rule.DUSK_MARGIN_MIN, dusk));
    }
}
