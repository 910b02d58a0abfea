package drylap.weather;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import drylap.weather.RainPersistence.Beyond;
import drylap.weather.RainPersistence.Bound;
import drylap.weather.RainPersistence.Found;
import drylap.weather.RainPersistence.Told;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The correlation that makes hourly chances give the chance told for all the hours together. Source of the figures: the
 * two-state chain 1 - (1-p)(1 - p(1-rho))^(n-1), solved by hand for rho; check values 45 and 46 of the domain notes.
 */
class RainPersistenceTests {
    @ParameterizedTest
    @CsvSource({"0.2, 12, 0.5, 0.790862", "0.3, 6, 0.6, 0.647043"})
    void equal_hours_and_their_period_tell_how_rain_lasts(double hourly, int hours, double together, double rho) {
        assertThat(RainPersistence.of(told(together, Collections.nCopies(hours, hourly))))
                .isInstanceOfSatisfying(
                        Found.class, found -> assertThat(found.rho()).isCloseTo(rho, within(1e-5)));
    }

    /** The bounds of .2 for 4 hours are .2 and .8; independent hours give 1 - .8^4 = .5904. */
    @ParameterizedTest
    @CsvSource({
        "0.1,    LIKELIEST_HOUR,    0.2",
        "0.2,    LASTING_RAIN,      0.2",
        "0.7,    INDEPENDENT_HOURS, 0.5904",
        "0.85,   SUM_OF_HOURS,      0.5904"
    })
    void a_period_out_of_the_chains_reach_says_which_bound_it_lies_beyond(
            double together, Bound bound, double reached) {
        assertThat(RainPersistence.of(told(together, Collections.nCopies(4, 0.2))))
                .isInstanceOfSatisfying(Beyond.class, beyond -> {
                    assertThat(beyond.bound()).isEqualTo(bound);
                    assertThat(beyond.reached()).isCloseTo(reached, within(1e-12));
                });
    }

    @Test
    void independent_hours_need_no_persistence() {
        assertThat(RainPersistence.of(told(0.5904, Collections.nCopies(4, 0.2))))
                .isInstanceOfSatisfying(
                        Found.class, found -> assertThat(found.rho()).isCloseTo(0, within(1e-8)));
    }

    @Test
    void dry_hours_and_certain_rain_tell_nothing() {
        assertThat(RainPersistence.of(told(0, List.of(0.0, 0.0, 0.0)))).isEqualTo(new Beyond(Bound.NOTHING_TO_TELL, 0));
        assertThat(RainPersistence.of(told(1, List.of(0.3, 1.0, 0.3)))).isEqualTo(new Beyond(Bound.NOTHING_TO_TELL, 1));
    }

    /** The chain's value of the check table, .365162 for .1 .2 .3 .2 at .6, read backwards. */
    @Test
    void changing_hours_give_the_correlation_back() {
        assertThat(RainPersistence.of(told(0.365162, List.of(0.1, 0.2, 0.3, 0.2))))
                .isInstanceOfSatisfying(
                        Found.class, found -> assertThat(found.rho()).isCloseTo(0.6, within(1e-5)));
    }

    /** Two periods told in whole percent from one correlation of .7: rounded apart they ask for .69 and .71, together for it. */
    @Test
    void many_periods_ask_for_one_correlation() {
        var first = told(RainChance.persistent(0.7, 0.3, 6) + 0.01, Collections.nCopies(6, 0.3));
        var second = told(RainChance.persistent(0.7, 0.2, 6) - 0.01, Collections.nCopies(6, 0.2));

        assertThat(RainPersistence.of(List.of(first, second)))
                .isInstanceOfSatisfying(
                        Found.class, found -> assertThat(found.rho()).isCloseTo(0.7, within(1e-9)));
        assertThatThrownBy(() -> RainPersistence.of(List.of())).hasMessageContaining("nothing was told");
    }

    @Test
    void what_no_model_can_give_is_known() {
        assertThat(told(0.1, List.of(0.2, 0.1)).possible()).isFalse();
        assertThat(told(0.31, List.of(0.2, 0.1)).possible()).isFalse();
        assertThat(told(0.3, List.of(0.2, 0.1)).possible()).isTrue();
    }

    @Test
    void one_hour_tells_nothing_of_lasting() {
        assertThatThrownBy(() -> told(0.2, List.of(0.2))).hasMessage("1 hours cannot tell how rain lasts");
        assertThatThrownBy(() -> told(1.2, List.of(0.2, 0.3))).hasMessageContaining("1.2 is outside 0..1");
    }

    private static Told told(double together, List<Double> hourly) {
        return new Told(hourly, together);
    }
}
