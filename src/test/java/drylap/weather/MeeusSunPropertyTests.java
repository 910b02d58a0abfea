package drylap.weather;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import drylap.kernel.GeoPoint;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;

class MeeusSunPropertyTests {
    /** Source: Meeus, example 25.a, 1992-10-13 0h of dynamical time; the printed figures are from memory. */
    @Example
    void the_second_sun_stands_where_its_book_says() {
        var sun = new MeeusSun(2448908.5);
        assertThat(sun.apparentLongitude()).isCloseTo(199.90894, within(1e-4));
        assertThat(sun.rightAscension()).isCloseTo(198.38083, within(1e-4));
        assertThat(sun.declination()).isCloseTo(-7.78507, within(1e-4));
    }

    /** Both suns keep to 0.01° below 60° of latitude; near the longest days there a minute is a small angle. */
    @Property
    void sunrise_and_sunset_agree_with_the_second_sun(
            @ForAll @DoubleRange(min = -60, max = 60) double latitude,
            @ForAll @DoubleRange(min = -180, max = 180) double longitude,
            @ForAll @IntRange(max = 3650) int day) {
        var place = new GeoPoint(latitude, longitude);
        var zone = ZoneOffset.ofHours((int) Math.round(longitude / 15));
        var sun = (Daylight.RisesAndSets)
                Daylight.of(place, zone, LocalDate.of(2022, 1, 1).plusDays(day));
        assertThat(sun.sunrise()).isCloseTo(MeeusSun.crossing(place, sun.noon(), -1), within(15, ChronoUnit.SECONDS));
        assertThat(sun.sunset()).isCloseTo(MeeusSun.crossing(place, sun.noon(), 1), within(15, ChronoUnit.SECONDS));
    }
}
