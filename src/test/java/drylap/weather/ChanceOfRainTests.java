package drylap.weather;

import static drylap.weather.Sky.clock;
import static drylap.weather.Sky.mild;
import static drylap.weather.Sky.rain;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import drylap.kernel.Rule;
import drylap.kernel.Rules;
import java.time.Duration;
import java.time.Instant;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Source of 0.365162: a two-state Markov chain of hours with chances .1 .2 .3 .2 and correlation 0.6, worked by hand. */
class ChanceOfRainTests {
    private final Sky sky = mild().at(10, rain(1, 0.1))
            .at(11, rain(1, 0.2))
            .at(12, rain(0, 0.3))
            .at(13, rain(1, 0.2));

    @Test
    void four_hours_together() {
        assertThat(chance("10:00", "14:00")).isCloseTo(0.365162, within(1e-6));
    }

    @Test
    void a_touched_hour_counts_in_full() {
        assertThat(chance("10:59", "13:01")).isCloseTo(0.365162, within(1e-6));
    }

    /** Worked by hand: independent hours at 0; two hours of .3 and .2 by the covariance; beyond the forecast .2 and .08. */
    @Test
    void rain_lasts_as_the_rule_says() {
        var showers = sky.with(Rule.RAIN_PERSISTENCE, 0).weather();
        assertThat(showers.chanceOfRain(clock("10:00"), clock("14:00"))).isCloseTo(0.5968, within(1e-12));
        var half = sky.only(10, 14).with(Rule.RAIN_PERSISTENCE, 0.5).weather();
        assertThat(half.chanceOfRain(clock("12:00"), clock("14:00")))
                .isCloseTo(0.5 - (0.06 + 0.5 * Math.sqrt(0.3 * 0.7 * 0.2 * 0.8)), within(1e-12));
        assertThat(half.chanceOfRain(clock("13:00"), clock("15:00")))
                .isCloseTo(0.28 - (0.016 + 0.5 * Math.sqrt(0.2 * 0.8 * 0.08 * 0.92)), within(1e-12));
        assertThat(half.oddsOfRain(clock("12:00"), clock("14:00")).likely())
                .isEqualTo(half.chanceOfRain(clock("12:00"), clock("14:00")));
    }

    @Test
    void an_hour_that_only_borders_does_not_count() {
        assertThat(chance("11:00", "12:00")).isCloseTo(0.2, within(1e-12));
    }

    /** Worked by hand: a period of 0.3, then an hour of 0.2 that correlates with it by 0.6, as if the period were one hour. */
    @Test
    void one_chance_for_several_hours_counts_once() {
        UnaryOperator<ForecastHour> period = hour -> told(hour, "10:00", 0.3);
        var periods = mild().at(10, period).at(11, period).at(12, period).at(13, rain(1, 0.2));

        assertThat(periods.weather().chanceOfRain(clock("10:00"), clock("13:00")))
                .isCloseTo(0.3, within(1e-12));
        assertThat(periods.weather().chanceOfRain(clock("11:30"), clock("11:40")))
                .isCloseTo(0.3, within(1e-12));
        assertThat(periods.weather().chanceOfRain(clock("10:00"), clock("14:00")))
                .isCloseTo(0.3 + 0.2 - (0.06 + 0.6 * Math.sqrt(0.3 * 0.7 * 0.2 * 0.8)), within(1e-12));
    }

    /** Bounds by Fréchet: the likeliest of .1 .2 .3 .2, and their sum; independent 1 - .9 x .8 x .7 x .8. */
    @Test
    void the_odds_come_with_the_bounds_that_no_model_can_leave() {
        OddsOfRain odds = sky.weather().oddsOfRain(clock("10:00"), clock("14:00"));
        assertThat(odds.atLeast()).isEqualTo(0.3);
        assertThat(odds.likely()).isCloseTo(0.365162, within(1e-6));
        assertThat(odds.independent()).isCloseTo(0.5968, within(1e-12));
        assertThat(odds.atMost()).isCloseTo(0.8, within(1e-12));
    }

    /** A period of .3 counts once in the bounds too, and at the correlation of the contract the likely value is the planner's. */
    @Test
    void the_odds_of_periods_count_each_once() {
        UnaryOperator<ForecastHour> period = hour -> told(hour, "10:00", 0.3);
        var weather = mild().at(10, period)
                .at(11, period)
                .at(12, period)
                .at(13, rain(1, 0.2))
                .weather();
        OddsOfRain odds = weather.oddsOfRain(clock("11:30"), clock("14:00"));
        assertThat(odds.atLeast()).isEqualTo(0.3);
        assertThat(odds.atMost()).isCloseTo(0.5, within(1e-12));
        assertThat(odds.likely()).isEqualTo(weather.chanceOfRain(clock("11:30"), clock("14:00")));
        assertThat(weather.oddsOfRain(clock("12:00"), clock("12:00"))).isEqualTo(OddsOfRain.of(0.6));
        assertThatThrownBy(() -> weather.oddsOfRain(clock("12:00"), clock("11:00")))
                .hasMessageContaining("runs backwards");
    }

    private static ForecastHour told(ForecastHour hour, String from, double chance) {
        return new ForecastHour(hour.start(), 1, chance, 3, 5, 90, 10, 70, clock(from));
    }

    @Test
    void one_hour_is_its_own_chance() {
        assertThat(chance("12:15", "12:16")).isCloseTo(0.3, within(1e-12));
    }

    @Test
    void no_time_no_rain() {
        assertThat(chance("12:15", "12:15")).isZero();
    }

    /** Source of the values: the chain's closed form with chances .2 and .05 and correlation 0.6, over 8 and 10 hours. */
    @ParameterizedTest
    @CsvSource({"0.2, 8, 0.553723", "0.05, 10, 0.207940", "0.2, 1, 0.2", "0, 9, 0"})
    void an_hour_that_is_not_forecast_is_as_likely_wet_as_the_rule_says(double chance, int hours, double together) {
        Instant next = clock("00:00").plus(Duration.ofDays(2));
        Instant until = next.plus(Duration.ofHours(hours));
        Rules rules = Rules.STANDARD.with(Rule.BEYOND_RAIN_P, chance);
        var none = SiteWeather.of(Sky.SITE, Forecast.none(Sky.SITE.id()), rules, Sky.day(Sky.DAY));

        assertThat(none.chanceOfRain(next, until)).isCloseTo(together, within(1e-6));
        assertThat(sky.with(Rule.BEYOND_RAIN_P, chance).weather().chanceOfRain(next, until))
                .isCloseTo(together, within(1e-6));
    }

    /** Worked by hand: the last forecast hour has 0.3, the first 0.1, those beside them 0.2, and they correlate by 0.6. */
    @Test
    void rain_goes_on_over_the_ends_of_the_forecast() {
        var some = sky.only(10, 13).with(Rule.BEYOND_RAIN_P, 0.2).weather();

        assertThat(some.chanceOfRain(clock("12:30"), clock("13:30")))
                .isCloseTo(0.5 - (0.06 + 0.6 * Math.sqrt(0.3 * 0.7 * 0.2 * 0.8)), within(1e-12));
        assertThat(some.chanceOfRain(clock("09:59"), clock("10:01")))
                .isCloseTo(0.3 - (0.02 + 0.6 * Math.sqrt(0.1 * 0.9 * 0.2 * 0.8)), within(1e-12));
    }

    @Test
    void a_backward_stretch_is_refused() {
        assertThatThrownBy(() -> chance("12:00", "11:00")).hasMessageContaining("runs backwards");
    }

    private double chance(String from, String until) {
        return sky.weather().chanceOfRain(clock(from), clock(until));
    }
}
