package drylap.weather;

import static drylap.weather.Sky.clock;
import static drylap.weather.Sky.mild;
import static drylap.weather.Sky.rain;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import drylap.kernel.Rules;
import java.time.Duration;
import java.time.Instant;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;

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

    @Test
    void beyond_and_before_the_forecast_nothing_is_known() {
        Instant next = clock("00:00").plus(Duration.ofDays(2));
        assertThat(sky.weather().chanceOfRain(next, next.plus(Duration.ofHours(9))))
                .isZero();
        assertThat(sky.only(10, 13).weather().chanceOfRain(clock("12:30"), next))
                .isCloseTo(0.3, within(1e-12));
        assertThat(sky.only(10, 13).weather().chanceOfRain(clock("08:00"), clock("10:00")))
                .isZero();
        assertThat(sky.only(10, 13).weather().chanceOfRain(clock("08:00"), clock("10:30")))
                .isCloseTo(0.1, within(1e-12));
        var none = SiteWeather.of(Sky.SITE, Forecast.none(Sky.SITE.id()), Rules.STANDARD, Sky.day(Sky.DAY));
        assertThat(none.chanceOfRain(clock("08:00"), clock("10:30"))).isZero();
    }

    @Test
    void a_backward_stretch_is_refused() {
        assertThatThrownBy(() -> chance("12:00", "11:00")).hasMessageContaining("runs backwards");
    }

    private double chance(String from, String until) {
        return sky.weather().chanceOfRain(clock(from), clock(until));
    }
}
