package drylap.weather;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import drylap.kernel.GeoPoint;
import drylap.kernel.Rule;
import drylap.kernel.Rules;
import drylap.kernel.SiteId;
import drylap.kernel.Task;
import drylap.kernel.TimeWindow;
import drylap.sites.Site;
import drylap.sites.Terrain;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The American clocks go forward on 2026-03-08 and back on 2026-11-01 (Energy Policy Act of 2005, and tzdata). */
class ClockChangeTests {
    @ParameterizedTest
    @ValueSource(strings = {"2026-03-08", "2026-11-01"})
    void the_open_minutes_of_a_changed_day_are_those_of_a_walk_minute_by_minute(String date) {
        TimeWindow day = Sky.day(LocalDate.parse(date));
        Forecast forecast = new Forecast(Sky.SITE.id(), showers(day));
        var weather = SiteWeather.of(Sky.SITE, forecast, Rules.STANDARD, day);
        var oracle = new MinuteByMinute(Sky.SITE, forecast, Rules.STANDARD);
        for (Task task : Task.values())
            assertThat(minutes(weather.openHours(Sky.EAST).windows(task)))
                    .as("%s", task)
                    .isPositive()
                    .isEqualTo(minutes(oracle.open(Sky.EAST, task, day)));
    }

    /** Daylight does not care about clocks: with the dark hours, the whole day is there, 23 h or 25 h of it. */
    @ParameterizedTest
    @CsvSource({"2026-03-08, 23", "2026-11-01, 25", "2026-03-09, 24"})
    void light_and_dark_make_up_the_day(LocalDate date, int hours) {
        TimeWindow day = Sky.day(date);
        var weather = SiteWeather.of(Sky.SITE, Forecast.none(Sky.SITE.id()), Rules.STANDARD, day);
        assertThat(minutes(weather.dark()) + minutes(weather.openHours(Sky.EAST).windows(Task.CLAD)))
                .isEqualTo(60L * hours);
    }

    /** In spring the day lengthens by 3 to 4 minutes here (any almanac); the clock change must add no hour to that. */
    @Test
    void the_light_of_a_changed_day_is_that_of_the_day_before() {
        assertThat(light("2026-03-08")).isCloseTo(light("2026-03-07"), within(5L));
        assertThat(light("2026-11-01")).isCloseTo(light("2026-10-31"), within(5L));
    }

    @Test
    void the_clock_shows_an_hour_more_in_the_spring_evening() {
        var weather = SiteWeather.of(
                Sky.SITE,
                Forecast.none(Sky.SITE.id()),
                Rules.STANDARD.with(Rule.DUSK_MARGIN_MIN, 0),
                new TimeWindow(
                        Sky.midnight(LocalDate.parse("2026-03-07")), Sky.midnight(LocalDate.parse("2026-03-09"))));
        assertThat(Sky.clock(weather.openHours(Sky.EAST).windows(Task.CLAD)))
                .satisfiesExactly(
                        before -> assertThat(before).startsWith("06:3").contains("-18:0"),
                        after -> assertThat(after).startsWith("07:3").contains("-19:0"));
    }

    @Test
    void the_midnight_sun_leaves_no_dark_minute_and_the_polar_night_no_light_one() {
        var tromso = new Site(
                new SiteId("quay"), "Quay", new GeoPoint(69.6492, 18.9553), ZoneId.of("Europe/Oslo"), Terrain.II);
        assertThat(dark(tromso, "2026-06-20T22:00:00Z", "2026-06-23T22:00:00Z")).isEmpty();
        assertThat(dark(tromso, "2026-12-20T23:00:00Z", "2026-12-23T23:00:00Z"))
                .containsExactly(
                        new TimeWindow(Instant.parse("2026-12-20T23:00:00Z"), Instant.parse("2026-12-23T23:00:00Z")));
    }

    /** In Reykjavik the midsummer sun sets after midnight (00:04 on the 22nd): the last evening minutes stay light. */
    @Test
    void light_runs_past_midnight_where_the_sun_does() {
        assertThat(nights("2026-06-21T12:00:00Z")).singleElement().satisfies(night -> {
            assertThat(night.from()).isBetween("2026-06-22T00:02:00Z", "2026-06-22T00:05:00Z");
            assertThat(night.until()).isBetween("2026-06-22T02:54:00Z", "2026-06-22T02:58:00Z");
        });
    }

    @Test
    void a_span_that_starts_at_midnight_still_has_the_last_light_of_the_day_before() {
        assertThat(nights("2026-06-22T00:00:00Z")).isEqualTo(nights("2026-06-21T12:00:00Z"));
    }

    private static List<TimeWindow> nights(String from) {
        var reykjavik = new Site(
                new SiteId("quay"),
                "Quay",
                new GeoPoint(64.1466, -21.9426),
                ZoneId.of("Atlantic/Reykjavik"),
                Terrain.II);
        return SiteWeather.of(
                        reykjavik,
                        Forecast.none(reykjavik.id()),
                        Rules.STANDARD.with(Rule.DUSK_MARGIN_MIN, 0),
                        new TimeWindow(Instant.parse(from), Instant.parse("2026-06-22T12:00:00Z")))
                .dark();
    }

    private static List<TimeWindow> dark(Site site, String from, String until) {
        return SiteWeather.of(
                        site,
                        Forecast.none(site.id()),
                        Rules.STANDARD,
                        new TimeWindow(Instant.parse(from), Instant.parse(until)))
                .dark();
    }

    private static long light(String date) {
        TimeWindow day = Sky.day(LocalDate.parse(date));
        return day.length().toMinutes()
                - minutes(SiteWeather.of(Sky.SITE, Forecast.none(Sky.SITE.id()), Rules.STANDARD, day)
                        .dark());
    }

    /** Rain from the east in every seventh hour of the day. */
    private static List<ForecastHour> showers(TimeWindow day) {
        List<ForecastHour> hours = new ArrayList<>();
        for (Instant start = day.from(); start.isBefore(day.until()); start = start.plus(Duration.ofHours(1))) {
            boolean wet = hours.size() % 7 == 1;
            hours.add(new ForecastHour(start, wet ? 3 : 0, wet ? 0.7 : 0, 5, 6, 80, 9, 80));
        }
        return hours;
    }

    private static long minutes(List<TimeWindow> windows) {
        return windows.stream().mapToLong(window -> window.length().toMinutes()).sum();
    }
}
