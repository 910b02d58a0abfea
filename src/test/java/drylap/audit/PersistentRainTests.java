package drylap.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PersistentRainTests {
    /** Deduced: what holds a certain hour is certain, whatever is beside it. */
    @ParameterizedTest
    @ValueSource(doubles = {0, 0.01, 0.07, 0.1, 0.5, 0.99, 1})
    void with_an_hour_of_certain_rain_rain_is_certain(double beside) {
        double rho = 0.6;
        assertThat(PersistentRain.chance(List.of(beside, 1.0), rho)).isCloseTo(1, within(1e-12));
        assertThat(PersistentRain.chance(List.of(1.0, beside), rho)).isCloseTo(1, within(1e-12));
        assertThat(PersistentRain.chance(List.of(0.3, 1.0, beside), rho)).isCloseTo(1, within(1e-12));
    }

    /** Deduced: 1 - (1 - p) p(dry after dry), with p(dry after dry) = 1 - p (1 - rho). */
    @Test
    void two_equal_hours_are_wet_by_the_closed_form() {
        assertThat(PersistentRain.chance(List.of(0.3, 0.3), 0.6)).isCloseTo(1 - 0.7 * (1 - 0.3 * 0.4), within(1e-12));
    }
}
