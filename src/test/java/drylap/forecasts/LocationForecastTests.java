package drylap.forecasts;

import static drylap.forecasts.ForecastSource.MET_NORWAY;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import drylap.weather.ForecastHour;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;

class LocationForecastTests {
    private static final Instant NOON = Instant.parse("2026-11-25T12:00:00Z");

    private final Payload golden = Payload.of(MET_NORWAY);
    private final ReadForecast read = golden.sound();
    private final List<ForecastHour> hours = read.forecast().hours();

    @Test
    void rain_belongs_to_the_hour_from_its_time() {
        assertThat(read.issuedAt()).isEqualTo("2026-11-25T11:04:26Z");
        assertThat(hours).hasSize(14);
        assertThat(hours.getFirst()).isEqualTo(new ForecastHour(NOON, 0.4, 0.45, 2.5, 6.6, 151.8, 7.5, 88.6));
        assertThat(hours.get(1).rainMm()).isEqualTo(0.8);
    }

    @Test
    void a_step_of_six_hours_shares_its_rain_out_and_has_one_chance() {
        assertThat(hours.subList(2, 8)).allSatisfy(hour -> {
            assertThat(hour.rainMm()).isCloseTo(0.6, within(1e-9));
            assertThat(hour.rainProbability()).isEqualTo(0.7);
            assertThat(hour.chanceFrom()).isEqualTo("2026-11-25T14:00:00Z");
            assertThat(hour.temperatureC()).isEqualTo(6.0);
        });
        assertThat(hours.getLast()).returns(Instant.parse("2026-11-25T20:00:00Z"), ForecastHour::chanceFrom);
    }

    @Test
    void gusts_that_are_not_told_later_on_are_stood_in_for() {
        assertThat(hours.get(2).gustMs()).isCloseTo(6.4, within(1e-9));
        assertThat(read.remarks())
                .containsExactly(
                        "no gusts told, so 1.6 times the mean wind stands for them: 12 hours from Wed 25 Nov 06:00");
    }

    @Test
    void an_hour_without_a_chance_of_its_own_has_that_of_its_six_hours_once() {
        var sparse = golden.change(", \"probability_of_precipitation\": 45.0", "")
                .change(", \"probability_of_precipitation\": 50.0", "")
                .sound();

        assertThat(sparse.forecast().hours().subList(0, 2)).allSatisfy(hour -> {
            assertThat(hour.rainProbability()).isEqualTo(0.8);
            assertThat(hour.chanceFrom()).isEqualTo(NOON);
        });
    }

    /** The golden answer has hourly chances for two hours only, so no six hours have all of theirs. */
    @Test
    void a_period_is_kept_where_each_of_its_hours_has_a_chance_of_its_own() {
        assertThat(read.periods()).isEmpty();
        var both = new Payload(MET_NORWAY, BothTellings.of(Payload.QUAY, NOON, 8, 0.7)).sound();

        assertThat(both.periods())
                .extracting(PeriodChance::from)
                .containsExactly(NOON, NOON.plusSeconds(3600), NOON.plusSeconds(7200));
        assertThat(both.periods().getFirst())
                .returns(6, PeriodChance::hours)
                .satisfies(six -> assertThat(six.chance())
                        .isBetween(both.forecast().hours().get(3).rainProbability(), 1.0));
    }

    @Test
    void a_gap_that_something_stands_in_for_makes_no_period() {
        String told = BothTellings.of(Payload.QUAY, NOON, 8, 0.7);
        String third = told.lines()
                .filter(line -> line.contains("next_1_hours"))
                .skip(3)
                .findFirst()
                .orElseThrow();
        var gap = new Payload(MET_NORWAY, told.replace(third, "")).sound();

        assertThat(gap.forecast().hours()).hasSize(8);
        assertThat(gap.periods()).isEmpty();
    }

    @Test
    void without_any_chance_the_amount_decides_and_that_is_told() {
        var none = golden.change("\"probability_of_precipitation\"", "\"thunder\"")
                .change("\"thunder\": \"%\"", "\"probability_of_precipitation\": \"%\"")
                .sound();

        assertThat(none.forecast().hours().getFirst().rainProbability()).isEqualTo(1);
        assertThat(none.forecast().hours().getLast().rainProbability()).isEqualTo(0);
        assertThat(none.remarks())
                .contains("no chance of rain told, so rain of 0.1 mm or more counts as certain and less as none: "
                        + "14 hours from Wed 25 Nov 04:00");
    }
}
