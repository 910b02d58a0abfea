package drylap.weather;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Source of the units: the SI brochure (kilometre, nautical mile) and the international mile of 1959. */
class WindSpeedTests {
    /** 11.112 km/h = 6 kn. */
    @Test
    void kilometres_and_knots_meet_in_metres_per_second() {
        assertThat(WindSpeed.ofKilometresPerHour(11.112).metresPerSecond()).isCloseTo(3.086667, within(1e-6));
        assertThat(WindSpeed.ofKnots(6).metresPerSecond()).isCloseTo(3.086667, within(1e-6));
    }

    /** ANSI A92.20 rates platforms for outdoor use at 28 mph, printed as 12.5 m/s. */
    @Test
    void the_outdoor_platform_limit_in_metres_per_second() {
        assertThat(WindSpeed.ofMilesPerHour(28).metresPerSecond()).isCloseTo(12.517, within(1e-3));
    }

    @ParameterizedTest
    @ValueSource(doubles = {-0.1, Double.NaN, Double.POSITIVE_INFINITY})
    void a_speed_that_cannot_be_is_refused(double speed) {
        assertThatThrownBy(() -> WindSpeed.ofKnots(speed)).hasMessageContaining("is below 0 or no number");
    }
}
