package drylap.weather;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Source of the figures: probability calculus of a two-state Markov chain (Gabriel and Neumann 1962), worked by hand. */
class RainChanceTests {
    @Test
    void independent_hours_multiply_their_dry_chances() {
        assertThat(RainChance.independent(0.1, 0.2, 0.3)).isCloseTo(0.496, within(1e-12));
    }

    /** Fréchet's inequalities. */
    @Test
    void no_model_leaves_the_hard_bounds() {
        assertThat(RainChance.atLeast(0.1, 0.2, 0.3)).isCloseTo(0.3, within(1e-12));
        assertThat(RainChance.atMost(0.1, 0.2, 0.3)).isCloseTo(0.6, within(1e-12));
        assertThat(RainChance.atMost(0.7, 0.6)).isEqualTo(1);
    }

    @ParameterizedTest
    @CsvSource({
        "0.2, 8, 0, 0.832228", "0.2, 8, 0.3, 0.721658", "0.2, 8, 0.6, 0.553723",
        "0.2, 8, 0.8, 0.398842", "0.2, 8, 1, 0.2", "0.05, 10, 0.6, 0.207940"
    })
    void persistent_rain_of_equal_hours(double hourly, int hours, double rho, double expected) {
        double[] each = new double[hours];
        Arrays.fill(each, hourly);
        assertThat(RainChance.persistent(rho, hourly, hours)).isCloseTo(expected, within(1e-6));
        assertThat(RainChance.persistent(rho, each)).isCloseTo(expected, within(1e-6));
    }

    @Test
    void persistent_rain_of_changing_hours() {
        assertThat(RainChance.persistent(0.6, 0.1, 0.2, 0.3, 0.2)).isCloseTo(0.365162, within(1e-6));
        assertThat(RainChance.persistent(0, 0.1, 0.2, 0.3, 0.2)).isCloseTo(0.5968, within(1e-6));
        assertThat(RainChance.atLeast(0.1, 0.2, 0.3, 0.2)).isEqualTo(0.3);
    }

    /** Unclipped, both wet would be 0.0475 + 0.95 x 0.0475 = 0.0926 > 0.05: more than the rarer hour alone. */
    @Test
    void two_hours_are_never_both_wet_more_often_than_the_rarer_one() {
        assertThat(RainChance.persistent(1, 0.05, 0.95)).isCloseTo(0.95, within(1e-12));
        assertThat(RainChance.persistent(1, 0.95, 0.05)).isCloseTo(0.95, within(1e-12));
    }

    @Test
    void an_hour_of_certain_rain_settles_it() {
        assertThat(RainChance.persistent(0.6, 0.1, 1, 0)).isEqualTo(1);
        assertThat(RainChance.persistent(0.6, 1, 0.2)).isEqualTo(1);
    }

    /** Published: the US weather service's example, C x A. */
    @Test
    void the_chance_at_a_point_is_confidence_times_coverage() {
        assertThat(RainChance.atPoint(0.5, 0.8)).isEqualTo(0.40);
    }

    @Test
    void no_hours_no_rain() {
        assertThat(RainChance.persistent(0.6)).isZero();
        assertThat(RainChance.persistent(0.6, 0.3, 0)).isZero();
        assertThat(RainChance.independent()).isZero();
    }

    @Test
    void a_chance_beyond_one_is_refused() {
        assertThatThrownBy(() -> RainChance.independent(1.2)).hasMessageContaining("1.2 is outside 0..1");
        assertThatThrownBy(() -> RainChance.persistent(Double.NaN, 0.2)).hasMessageContaining("NaN is outside 0..1");
    }
}
