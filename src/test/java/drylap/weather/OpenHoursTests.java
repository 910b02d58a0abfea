package drylap.weather;

import static drylap.kernel.Task.CLAD;
import static drylap.kernel.Task.INSTALL;
import static drylap.kernel.Task.TEST;
import static drylap.kernel.Task.WRAP;
import static drylap.weather.Sky.EAST;
import static drylap.weather.Sky.NORTH;
import static drylap.weather.Sky.WEST;
import static drylap.weather.Sky.clock;
import static drylap.weather.Sky.mild;
import static drylap.weather.Sky.rain;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import drylap.kernel.FacadeId;
import drylap.kernel.Rule;
import drylap.kernel.Rules;
import drylap.kernel.SiteId;
import drylap.kernel.Task;
import drylap.kernel.TimeWindow;
import drylap.sites.Facade;
import java.time.Duration;
import java.time.temporal.ChronoUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.shredzone.commons.suncalc.SunTimes;

/** The rules of open hours, one shutting reason after the other. Source: this project's planning contract, section 4. */
class OpenHoursTests {
    private static final String DAWN = "06:24";
    private static final String DUSK = "19:26";
    private static final String ALL_DAY = DAWN + "-" + DUSK;

    /** Second source for the two clock times that the other tests here lean on: commons-suncalc. */
    @Test
    void dawn_and_dusk_are_those_of_another_library() {
        var sun = SunTimes.compute()
                .at(47.6062, -122.3321)
                .on(Sky.DAY)
                .timezone(Sky.ZONE)
                .oneDay()
                .execute();
        assertThat(sun.getRise().toInstant()).isCloseTo(clock(DAWN), within(59, ChronoUnit.SECONDS));
        assertThat(sun.getSet().minusMinutes(30).toInstant()).isCloseTo(clock(DUSK), within(59, ChronoUnit.SECONDS));
    }

    @ParameterizedTest
    @EnumSource(Task.class)
    void a_mild_day_is_open_from_sunrise_to_half_an_hour_before_sunset(Task task) {
        assertThat(mild().open(task, EAST)).containsExactly(ALL_DAY);
    }

    @Test
    void a_longer_dusk_margin_ends_the_day_earlier() {
        assertThat(mild().with(Rule.DUSK_MARGIN_MIN, 90).open(CLAD, EAST)).containsExactly(DAWN + "-18:26");
    }

    @Test
    void a_margin_with_a_fraction_rounds_the_end_down() {
        assertThat(mild().with(Rule.DUSK_MARGIN_MIN, 89.1).open(CLAD, EAST)).containsExactly(DAWN + "-18:27");
    }

    @Test
    void rain_shuts_wrap_and_cladding_but_not_the_water_test() {
        assertThat(mild().rain(12).open(WRAP, EAST)).containsExactly(DAWN + "-12:00", "13:00-" + DUSK);
        assertThat(mild().rain(12).open(CLAD, EAST)).containsExactly(DAWN + "-12:00", "13:00-" + DUSK);
        assertThat(mild().rain(12).open(TEST, EAST)).containsExactly(ALL_DAY);
    }

    @ParameterizedTest
    @CsvSource({"0.2, 0.30, true", "0.19, 0.30, false", "0.2, 0.29, false", "9, 1, true", "0, 1, false"})
    void it_rains_from_both_thresholds_on(double mm, double probability, boolean rains) {
        assertThat(mild().at(12, rain(mm, probability)).weather().raining()).hasSize(rains ? 1 : 0);
    }

    @Test
    void an_install_skins_before_the_rain_and_a_wetted_wall_dries_for_three_hours_after_it() {
        assertThat(mild().rain(12).open(INSTALL, EAST)).containsExactly(DAWN + "-11:30", "16:00-" + DUSK);
    }

    @Test
    void a_west_wall_opens_at_once_after_rain_from_the_east() {
        assertThat(mild().rain(12).open(INSTALL, WEST)).containsExactly(DAWN + "-11:30", "13:00-" + DUSK);
    }

    /** Wind along the wall: cos 90° is 0. */
    @Test
    void a_wall_along_the_wind_stays_dry() {
        assertThat(mild().rain(12).open(INSTALL, NORTH)).containsExactly(DAWN + "-11:30", "13:00-" + DUSK);
    }

    /** 2/9 x 6 x 1^(8/9) = 1.3333 L/m². */
    @Test
    void a_wall_is_wetted_from_the_threshold_on() {
        var oneMillimetre = mild().at(12, rain(1, 1));
        assertThat(oneMillimetre.with(Rule.WETTING, 1.3333).open(INSTALL, EAST)).endsWith("16:00-" + DUSK);
        assertThat(oneMillimetre.with(Rule.WETTING, 1.3334).open(INSTALL, EAST)).endsWith("13:00-" + DUSK);
    }

    @ParameterizedTest
    @CsvSource({"0, 13:00", "0.5, 14:00", "1, 14:00", "2.5, 16:00", "6, 19:00"})
    void part_of_a_drying_hour_shuts_the_whole_hour(double dryingHours, String opens) {
        assertThat(mild().rain(12).with(Rule.DRYING_H, dryingHours).open(INSTALL, EAST))
                .endsWith(opens + "-" + DUSK);
    }

    @Test
    void rain_of_the_day_before_still_dries_this_morning() {
        var lateStart = mild().rain(6);
        assertThat(lateStart.open(INSTALL, EAST)).containsExactly("10:00-" + DUSK);
    }

    @Test
    void skin_time_reaches_back_over_a_cold_hour() {
        var sky = mild().temperature(11, 0).rain(12).with(Rule.SKIN_MIN, 90);
        assertThat(sky.open(INSTALL, WEST)).containsExactly(DAWN + "-10:30", "13:00-" + DUSK);
    }

    /** Rain at 20:00, dusk at 19:26: an install that ends at dusk has 34 of the 50 minutes that its sealant needs. */
    @Test
    void skin_time_reaches_back_over_the_dusk() {
        assertThat(mild().rain(20).with(Rule.SKIN_MIN, 50).open(INSTALL, WEST)).containsExactly(DAWN + "-19:10");
        assertThat(mild().rain(20).with(Rule.SKIN_MIN, 34).open(INSTALL, WEST)).containsExactly(ALL_DAY);
    }

    @Test
    void skin_time_counts_for_rain_that_starts_after_the_span() {
        var evening = mild().rain(24).with(Rule.SKIN_MIN, 300);
        assertThat(evening.open(INSTALL, WEST)).containsExactly(DAWN + "-19:00");
    }

    @Test
    void skin_time_with_a_fraction_rounds_the_end_down() {
        assertThat(mild().rain(12).with(Rule.SKIN_MIN, 29.5).open(INSTALL, WEST))
                .startsWith(DAWN + "-11:30");
    }

    @Test
    void a_short_gap_between_showers_is_all_skin_time() {
        assertThat(mild().rain(10).rain(12).with(Rule.SKIN_MIN, 60).open(INSTALL, WEST))
                .containsExactly(DAWN + "-09:00", "13:00-" + DUSK);
    }

    @ParameterizedTest
    @CsvSource({"4.3, 2", "4.4, 1", "4.5, 1"})
    void cold_shuts_an_install_below_its_limit(double celsius, int windows) {
        assertThat(mild().temperature(12, celsius).open(INSTALL, EAST)).hasSize(windows);
    }

    @ParameterizedTest
    @CsvSource({"0.9, 2", "1, 1", "1.1, 1"})
    void frost_shuts_a_water_test(double celsius, int windows) {
        assertThat(mild().temperature(12, celsius).open(TEST, EAST)).hasSize(windows);
    }

    @Test
    void cold_shuts_neither_wrap_nor_cladding() {
        assertThat(mild().temperature(12, -20).open(WRAP, EAST)).containsExactly(ALL_DAY);
        assertThat(mild().temperature(12, -20).open(CLAD, EAST)).containsExactly(ALL_DAY);
    }

    @ParameterizedTest
    @CsvSource({
        "11.1, INSTALL, 2",
        "11, INSTALL, 1",
        "9.1, INSTALL, 1",
        "11.1, TEST, 2",
        "11, TEST, 1",
        "9.1, WRAP, 2",
        "9, WRAP, 1",
        "40, CLAD, 1"
    })
    void gusts_shut_above_the_limit_of_the_task(double gustMs, Task task, int windows) {
        assertThat(mild().gust(12, gustMs).open(task, EAST)).hasSize(windows);
    }

    @Test
    void hours_beyond_the_forecast_are_open_in_daylight() {
        assertThat(mild().rain(12).only(0, 13).open(INSTALL, EAST)).containsExactly(DAWN + "-11:30", "13:00-" + DUSK);
        assertThat(mild().rain(12).only(0, 15).open(INSTALL, EAST)).containsExactly(DAWN + "-11:30", "15:00-" + DUSK);
        assertThat(mild().only(0, 0).open(INSTALL, EAST)).containsExactly(ALL_DAY);
    }

    @Test
    void hours_before_the_forecast_are_open_but_for_the_skin_time_of_its_first_rain() {
        assertThat(mild().rain(12).only(12, 48).open(WRAP, EAST)).containsExactly(DAWN + "-12:00", "13:00-" + DUSK);
        assertThat(mild().rain(12).only(12, 48).open(INSTALL, WEST)).containsExactly(DAWN + "-11:30", "13:00-" + DUSK);
    }

    @Test
    void a_span_that_cuts_a_minute_loses_it() {
        var weather = SiteWeather.of(
                Sky.SITE,
                Forecast.none(Sky.SITE.id()),
                Rules.STANDARD,
                new TimeWindow(clock("10:00").plusMillis(1), clock("11:00").plusSeconds(59)));
        assertThat(clock(weather.openHours(EAST).windows(CLAD))).containsExactly("10:01-11:00");
        var halfMinute = SiteWeather.of(
                Sky.SITE,
                Forecast.none(Sky.SITE.id()),
                Rules.STANDARD,
                new TimeWindow(clock("10:00").plusSeconds(10), clock("10:00").plusSeconds(40)));
        assertThat(halfMinute.openHours(EAST).windows(CLAD)).isEmpty();
    }

    @Test
    void walls_that_no_rain_reaches_share_their_windows() {
        var weather = mild().rain(12).weather();
        assertThat(weather.openHours(WEST).windows(INSTALL))
                .isSameAs(weather.openHours(NORTH).windows(INSTALL));
        assertThat(weather.openHours(WEST).windows(CLAD))
                .isSameAs(weather.openHours(EAST).windows(CLAD));
    }

    @Test
    void another_sites_forecast_or_facade_is_refused() {
        var elsewhere = new SiteId("mill");
        assertThatThrownBy(() -> SiteWeather.of(Sky.SITE, Forecast.none(elsewhere), Rules.STANDARD, Sky.day(Sky.DAY)))
                .hasMessage("the forecast is of site mill, not of site quay");
        var weather = mild().weather();
        assertThatThrownBy(() -> weather.openHours(new Facade(new FacadeId(elsewhere, "east"), 90, null)))
                .hasMessage("facade mill/east is not on site quay");
    }

    @Test
    void the_next_rain_is_the_first_hour_that_has_not_ended() {
        var weather = mild().rain(12).rain(13).rain(40).weather();
        assertThat(weather.nextRain(clock("00:00"))).map(TimeWindow::from).contains(clock("12:00"));
        assertThat(weather.nextRain(clock("12:59"))).map(TimeWindow::from).contains(clock("12:00"));
        assertThat(weather.nextRain(clock("13:00"))).map(TimeWindow::from).contains(clock("13:00"));
        assertThat(weather.nextRain(clock("14:00")))
                .map(TimeWindow::from)
                .contains(clock("16:00").plus(Duration.ofDays(1)));
        assertThat(weather.nextRain(clock("17:00").plus(Duration.ofDays(1)))).isEmpty();
        assertThat(weather.nextRain(clock("00:00").minus(Duration.ofDays(400)))).isPresent();
        assertThat(weather.nextRain(clock("00:00").plus(Duration.ofDays(400)))).isEmpty();
    }

    @Test
    void rain_over_several_hours_is_one_window() {
        assertThat(clock(mild().rain(12).rain(13).rain(20).weather().raining()))
                .containsExactly("12:00-14:00", "20:00-21:00");
    }
}
