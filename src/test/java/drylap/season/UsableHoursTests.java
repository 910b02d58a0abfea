package drylap.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import drylap.kernel.GeoPoint;
import drylap.kernel.Rule;
import drylap.kernel.Task;
import drylap.planning.JobFolder;
import drylap.planning.LabourRow;
import drylap.planning.LabourTable;
import drylap.season.SiteOutlook.Month;
import drylap.weather.Forecast;
import drylap.weather.ForecastHour;
import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalTime;
import java.time.YearMonth;
import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.shredzone.commons.suncalc.SunTimes;

/**
 * Closed forms of the stationary two-state chain, deduced by hand: with p the share of wet hours and rho the correlation of
 * neighbours, a dry hour is followed by a dry one with the chance a = 1 - p (1 - rho), and preceded by one with the same.
 */
class UsableHoursTests {
    private static final double P = 0.2;
    private static final double DRY = 1 - P;
    private static final double STAYS = 1 - P * (1 - 0.6);
    private static final int HOURS = 6;
    private static final int JULY = 31;

    private static Month july(JobFolder folder, int years) {
        var request = new SeasonRequest(SmallSite.FROM, List.of(), Map.of(), years, 7);
        return Season.of(folder, SmallSite.SITE, request)
                .facades()
                .getFirst()
                .months()
                .get(1);
    }

    private static SmallSite wet() {
        return SmallSite.usual().with(Rule.BEYOND_RAIN_P, P);
    }

    private static void within3Errors(Month month, double hoursADay) {
        assertThat(month.usable().error()).isPositive();
        assertThat(month.usable().value())
                .isCloseTo(hoursADay * JULY, within(3 * month.usable().error()));
    }

    @Test
    void without_drying_and_skin_every_dry_hour_counts() {
        Month month = july(wet().with(Rule.DRYING_H, 0).with(Rule.SKIN_MIN, 0).folder(), 1000);

        within3Errors(month, HOURS * DRY);
    }

    /** Where nothing is known of the wind every rain wets every wall: three dry hours must lie before. */
    @Test
    void a_wall_dries_for_three_hours_and_sealant_must_skin() {
        double open = DRY * Math.pow(STAYS, 3);

        within3Errors(july(wet().folder().withLabour(install(1)), 1000), HOURS * open * (1 - 0.5 * (1 - STAYS)));
    }

    /** Of an install of two hours an hour is of use only where the one before or after it in the shift is dry as well. */
    @Test
    void a_stretch_that_is_too_short_for_an_install_is_not_counted() {
        double inside = 1 - (1 - STAYS) * (1 - STAYS);
        JobFolder folder =
                wet().with(Rule.DRYING_H, 0).with(Rule.SKIN_MIN, 0).folder().withLabour(install(120));

        within3Errors(july(folder, 1000), DRY * ((HOURS - 2) * inside + 2 * STAYS));
    }

    private static LabourTable install(int minutes) {
        return new LabourTable(List.of(row(Task.INSTALL, minutes), row(Task.CLAD, 30)));
    }

    private static LabourRow row(Task task, int minutes) {
        return new LabourRow(task, null, new BigDecimal(minutes), BigDecimal.ZERO, BigDecimal.ZERO, 0, 0, 0);
    }

    @Test
    void where_it_never_rains_all_light_hours_of_the_shift_are_of_use_in_every_year() {
        var request = new SeasonRequest(SmallSite.FROM, SmallSite.normals(0, 0));
        Month month = Season.of(SmallSite.usual().folder(), SmallSite.SITE, request)
                .facades()
                .getFirst()
                .months()
                .get(1);

        assertThat(month.light()).isEqualTo(JULY * HOURS);
        assertThat(List.of(month.usable().value(), month.usable10(), month.usable90()))
                .containsOnly((double) JULY * HOURS);
    }

    /** By a second library (commons-suncalc), day by day: sunrise to half an hour before sunset. */
    @Test
    void the_light_of_a_month_agrees_with_a_second_library() {
        GeoPoint north = new GeoPoint(46.9521, 4.1663);
        JobFolder folder = SmallSite.usual()
                .at(north, LocalTime.MIDNIGHT, LocalTime.of(23, 59))
                .folder();
        Month month = july(folder, 50);

        double minutes = IntStream.rangeClosed(1, JULY)
                .mapToDouble(day -> minutes(north, Instant.parse("2026-07-%02dT00:00:00Z".formatted(day))))
                .sum();
        assertThat(month.month()).isEqualTo(YearMonth.of(2026, 7));
        assertThat(month.light() * 60).isCloseTo(minutes, within(1.5 * JULY));
    }

    private static double minutes(GeoPoint place, Instant day) {
        SunTimes sun = SunTimes.compute()
                .at(place.latitude(), place.longitude())
                .on(day)
                .timezone("UTC")
                .oneDay()
                .execute();
        return Duration.between(sun.getRise(), sun.getSet()).toMinutes() - 30;
    }

    /** 15 of 30 or 31 days are lost, each by itself. */
    @Test
    void days_that_cold_takes_are_lost_whole() {
        var request = new SeasonRequest(SmallSite.FROM, SmallSite.normals(0, 15), Map.of(), 1000, 3);
        Month month = Season.of(SmallSite.usual().folder(), SmallSite.SITE, request)
                .facades()
                .getFirst()
                .months()
                .get(1);

        assertThat(month.usable().value())
                .isCloseTo(HOURS * (JULY - 15), within(3 * month.usable().error()));
        assertThat(month.usable90() - month.usable10()).isGreaterThan(HOURS);
    }

    /** Rain from the south at 10 m/s wets the south wall, which then dries; the same from the north leaves it open. */
    @Test
    void a_wall_in_the_lee_of_the_forecast_winds_is_open_for_longer() {
        assertThat(july(windFrom(0), 200).usable().value())
                .isGreaterThan(july(windFrom(180), 200).usable().value() + 10);
    }

    private static JobFolder windFrom(double degrees) {
        List<ForecastHour> hours = IntStream.range(0, 24)
                .mapToObj(hour ->
                        new ForecastHour(SmallSite.FROM.plus(Duration.ofHours(hour)), 0, 0, 10, 10, degrees, 15, 60))
                .toList();
        return wet().folder().withForecasts(List.of(new Forecast(SmallSite.SITE, hours)));
    }

    /** By hand: wet from 10 to 11, an hour of drying; half an hour for skin. 9:00 to 9:30 and 12:00 to 15:00 are open. */
    @Test
    void the_minutes_of_a_stretch_are_those_outside_rain_drying_and_skin() {
        BitSet shut = new BitSet();
        shut.set(10, 12);

        assertThat(DrawnSeason.open(540, 900, shut, 0, 30, 1)).isEqualTo(30 + 180);
        assertThat(DrawnSeason.open(540, 900, shut, 0, 30, 31)).isEqualTo(180);
        assertThat(DrawnSeason.open(540, 900, shut, 0, 30, 181)).isZero();
        shut.set(15);
        assertThat(DrawnSeason.open(540, 900, shut, 0, 30, 1))
                .as("rain as the shift ends: sealant must skin before it")
                .isEqualTo(30 + 150);
        shut.clear();
        shut.set(9);
        assertThat(DrawnSeason.open(540, 900, shut, 15, 30, 1))
                .as("hours that begin at a quarter past")
                .isEqualTo(900 - 615);
    }
}
