package drylap.weather;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Check values 16 to 20 and 22 to 24 of the domain notes, computed from the published formulas: Best 1950 (constants of the
 * abstract), Laws and Parsons 1943 and Dingle and Lee 1972 (constants from memory), Straube's factor.
 */
class RaindropsTests {
    /** 1.30 (ln 2)^(1/2.25). */
    @Test
    void half_of_the_water_is_in_drops_below_the_median_of_best() {
        assertThat(Raindrops.sizeMm(1, 0.5)).isCloseTo(1.104585, within(1e-6));
        assertThat(Raindrops.shareBelow(7, Raindrops.sizeMm(7, 0.3))).isCloseTo(0.3, within(1e-12));
    }

    @ParameterizedTest
    @CsvSource({"1, 1.105", "10, 1.8852", "50, 2.7386"})
    void heavier_rain_has_larger_drops(double rainMm, double medianMm) {
        assertThat(Raindrops.medianMm(rainMm)).isCloseTo(medianMm, within(1e-3));
    }

    /** From memory; a measurement apart from Best's, within 0.1 mm of it at 10 mm an hour. */
    @Test
    void another_measurement_finds_the_same_median() {
        assertThat(Raindrops.medianByLawsAndParsonsMm(10)).isCloseTo(1.8855, within(1e-3));
        assertThat(Raindrops.medianByLawsAndParsonsMm(10)).isCloseTo(Raindrops.medianMm(10), within(0.1));
    }

    /** From memory. */
    @ParameterizedTest
    @CsvSource({"1, 3.91928", "2, 6.55789", "3, 8.07912", "5, 9.08677"})
    void larger_drops_fall_faster(double sizeMm, double speed) {
        assertThat(Raindrops.fallSpeed(sizeMm)).isCloseTo(speed, within(1e-5));
    }

    /** From memory: the curve is for 0.1 to about 6 mm and levels off near 9.2 m/s. */
    @Test
    void no_drop_falls_faster_than_the_fastest_or_upwards() {
        assertThat(Raindrops.fallSpeed(8)).isEqualTo(9.2);
        assertThat(Raindrops.fallSpeed(0)).isEqualTo(Raindrops.fallSpeed(0.1)).isPositive();
    }

    @ParameterizedTest
    @CsvSource({"1, 0.2348", "2, 0.2066", "10, 0.1583", "25, 0.1395"})
    void wind_drives_less_of_heavier_rain(double rainMm, double factor) {
        assertThat(Raindrops.drivingFactor(rainMm)).isCloseTo(factor, within(1e-4));
    }

    @ParameterizedTest
    @CsvSource({"1, 67.0, 4.146", "10, 469.98, 5.911"})
    void the_water_in_the_air_and_the_rain_agree_on_a_speed(double rainMm, double water, double speed) {
        assertThat(Raindrops.waterInAir(rainMm)).isCloseTo(water, within(0.1));
        assertThat(Raindrops.speedOfWater(rainMm)).isCloseTo(speed, within(0.01));
    }

    @ParameterizedTest
    @CsvSource({"1, 1, 0.42544", "10, 2, 0.54724"})
    void the_share_of_smaller_drops(double rainMm, double sizeMm, double share) {
        assertThat(Raindrops.shareBelow(rainMm, sizeMm)).isCloseTo(share, within(1e-4));
    }
}
