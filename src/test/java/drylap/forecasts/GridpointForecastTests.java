package drylap.forecasts;

import static drylap.forecasts.ForecastSource.US_WEATHER_SERVICE;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import drylap.kernel.Rules;
import drylap.kernel.TimeWindow;
import drylap.weather.ForecastHour;
import drylap.weather.SiteWeather;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Check values 58 to 60 of the domain notes: a 66 hour interval, 32.426 mm over 6 hours, 11.112 km/h (6 knots). */
class GridpointForecastTests {
    private static final Instant NOON = Instant.parse("2026-11-25T12:00:00Z");

    private final Payload golden = Payload.of(US_WEATHER_SERVICE);
    private final ReadForecast read = golden.sound();
    private final List<ForecastHour> hours = read.forecast().hours();

    @Test
    void each_hour_of_an_interval_is_there_in_our_units() {
        assertThat(read.issuedAt()).isEqualTo("2026-11-25T11:40:54Z");
        assertThat(read.remarks()).isEmpty();
        assertThat(hours).hasSize(72).first().returns(NOON, ForecastHour::start);
        ForecastHour first = hours.getFirst();
        assertThat(first.rainMm()).isCloseTo(5.404333, within(1e-6));
        assertThat(first.windMs()).isCloseTo(3.086667, within(1e-6));
        assertThat(first.gustMs()).isCloseTo(10, within(1e-9));
        assertThat(first.windFromDeg()).isEqualTo(320);
        assertThat(first.temperatureC()).isCloseTo(13.888889, within(1e-6));
        assertThat(hours.get(6).gustMs()).isCloseTo(15, within(1e-9));
    }

    @Test
    void a_total_is_neither_lost_nor_repeated() {
        assertThat(hours.stream().mapToDouble(ForecastHour::rainMm).sum()).isCloseTo(35.426, within(1e-9));
        assertThat(hours.get(12).rainMm()).isCloseTo(0.05, within(1e-9));
    }

    @Test
    void the_chance_of_six_or_66_hours_is_the_chance_of_all_of_them() {
        assertThat(hours.subList(0, 6)).extracting(ForecastHour::chanceFrom).containsOnly(NOON);
        assertThat(chance(0, 6)).isCloseTo(0.6, within(1e-12));
        assertThat(chance(2, 3)).isCloseTo(0.6, within(1e-12));
        assertThat(chance(6, 72)).isCloseTo(0.2, within(1e-12));
    }

    private double chance(int from, int until) {
        var span = new TimeWindow(NOON, NOON.plus(Duration.ofHours(72)));
        return SiteWeather.of(Payload.QUAY, read.forecast(), Rules.STANDARD, span)
                .chanceOfRain(NOON.plus(Duration.ofHours(from)), NOON.plus(Duration.ofHours(until)));
    }

    @Test
    void a_chance_that_began_before_the_first_whole_hour_keeps_its_start() {
        var late = golden.change("2026-11-25T12:00:00+00:00/PT2H", "2026-11-25T13:00:00+00:00/PT1H")
                .sound();

        assertThat(late.forecast().hours().getFirst())
                .returns(NOON.plus(Duration.ofHours(1)), ForecastHour::start)
                .returns(NOON, ForecastHour::chanceFrom);
    }

    @Test
    void the_offset_counts_also_where_the_clocks_change() {
        var west = golden.change("2026-11-25T12:00:00+00:00/PT1H", "2026-11-25T04:00:00-08:00/PT1H")
                .change("2026-11-25T13:00:00+00:00/P2DT23H", "2026-11-25T06:00:00-07:00/P2DT23H")
                .sound();

        assertThat(west.forecast()).isEqualTo(read.forecast());
    }

    @Test
    void rain_with_a_chance_of_none_is_told_and_stays() {
        var odd = golden.change("\"value\": 60}", "\"value\": 0}").sound();

        assertThat(odd.remarks())
                .containsExactly("contradiction, rain with a chance of 0 %: 6 hours from Wed 25 Nov 04:00");
        assertThat(odd.forecast().hours().getFirst().rainMm()).isCloseTo(5.404333, within(1e-6));
    }

    @Test
    void a_gust_below_the_mean_is_told_and_the_mean_stands_for_it() {
        var odd = golden.change("\"value\": 54}", "\"value\": 9}").sound();

        assertThat(odd.remarks())
                .containsExactly(
                        "contradiction, gust below the mean wind, which stands for it: 66 hours from Wed 25 Nov 10:00");
        assertThat(odd.forecast().hours().getLast().gustMs()).isCloseTo(5, within(1e-9));
    }

    @Test
    void without_gusts_a_larger_mean_stands_in_and_is_told() {
        var calm = golden.change("windGust", "windGustOfLongAgo").sound();

        assertThat(calm.remarks())
                .containsExactly(
                        "no gusts told, so 1.6 times the mean wind stands for them: 72 hours from Wed 25 Nov 04:00");
        assertThat(calm.forecast().hours().getLast().gustMs()).isCloseTo(8, within(1e-9));
    }

    @Test
    void a_short_gap_gets_the_worse_of_its_two_ends_and_is_told() {
        var gap = golden.change("2026-11-25T14:00:00+00:00/P2DT22H", "2026-11-25T16:00:00+00:00/P2DT20H")
                .sound();

        assertThat(gap.forecast().hours()).hasSize(72);
        assertThat(gap.forecast().hours().get(3).temperatureC()).isEqualTo(5);
        assertThat(gap.remarks())
                .containsExactly(
                        "missing values, for which the worse of those before and after stand: 2 hours from Wed 25 Nov 06:00");
    }

    @Test
    void a_long_gap_ends_the_forecast_and_is_told() {
        var gap = golden.change("2026-11-25T14:00:00+00:00/P2DT22H", "2026-11-25T18:00:00+00:00/P2DT18H")
                .sound();

        assertThat(gap.forecast().hours()).hasSize(2);
        assertThat(gap.remarks()).containsExactly("ends at Wed 25 Nov 06:00: the next hour has no temperature");
    }

    @Test
    void a_null_tells_nothing_for_its_interval() {
        var gap = golden.change("P2DT22H\", \"value\": 5}", "P2DT22H\", \"value\": null}")
                .sound();

        assertThat(gap.forecast().hours()).hasSize(2);
    }

    @Test
    void percent_and_degrees_need_no_unit() {
        var bare = golden.change("\"uom\": \"wmoUnit:percent\", ", "")
                .change("\"uom\": \"wmoUnit:degree_(angle)\", ", "")
                .sound();

        assertThat(bare.forecast()).isEqualTo(read.forecast());
    }

    @Test
    void intervals_may_stand_in_any_order() {
        var turned = golden.change(
                        "2026-11-25T12:00:00+00:00/PT6H\", \"value\": 36}",
                        "2026-11-25T18:00:00+00:00/P2DT18H\", \"value\": 54}X")
                .change(
                        "2026-11-25T18:00:00+00:00/P2DT18H\", \"value\": 54}]",
                        "2026-11-25T12:00:00+00:00/PT6H\", \"value\": 36}]")
                .change("54}X", "54}")
                .sound();

        assertThat(turned.forecast()).isEqualTo(read.forecast());
    }
}
