package drylap.sites;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import drylap.kernel.GeoPoint;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class PlaceTextTests {
    /** 47°36'22.32" is 47 + 36/60 + 22.32/3600 = 47.6062, worked out by hand. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            47.6062, -122.3321                  | 47.6062  | -122.3321
            (47.6062; -122.3321)                | 47.6062  | -122.3321
            47.6062 -122.3321                   | 47.6062  | -122.3321
            47.6062N 122.3321W                  | 47.6062  | -122.3321
            47.6062° N, 122.3321° W             | 47.6062  | -122.3321
            47°36'22.32"N 122°19'55.56"W        | 47.6062  | -122.3321
            47° 36′ 22.32″ n, 122° 19′ 55.56″ w | 47.6062  | -122.3321
            47°36.372'N 122°19.926'W            | 47.6062  | -122.3321
            -33.9249, 18.4241                   | -33.9249 | 18.4241
            33.9249 S, 18.4241 E                | -33.9249 | 18.4241
            −0.5, 0.25                          | -0.5     | 0.25
            0, 0                                | 0        | 0
            90, 180                             | 90       | 180
            """)
    void places_are_read_as_maps_write_them(String text, double latitude, double longitude) {
        GeoPoint place = PlaceText.read(text).orElseThrow();

        assertThat(place.latitude()).isCloseTo(latitude, within(1e-9));
        assertThat(place.longitude()).isCloseTo(longitude, within(1e-9));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                " ",
                "Mill Lane 4",
                "47.6",
                "91, 0",
                "0, 181",
                "47,6062, -122,3321",
                "47.6 N 122 S",
                "1, 2, 3",
                "NaN, 1"
            })
    void anything_else_is_no_place(String text) {
        assertThat(PlaceText.read(text)).isEmpty();
    }

    @Test
    void a_place_is_written_as_it_is_read() {
        assertThat(PlaceText.of(new GeoPoint(47.6062, -122.3))).isEqualTo("47.6062, -122.3");
        assertThat(PlaceText.of(new GeoPoint(-10, 100))).isEqualTo("-10, 100");
        assertThat(PlaceText.read(PlaceText.of(new GeoPoint(1.234567, -0.000001))))
                .contains(new GeoPoint(1.234567, -0.000001));
    }

    /** The compass has eight points 45 degrees apart, clockwise from north. */
    @ParameterizedTest
    @CsvSource({
        "N, 0",
        "ne, 45",
        "East, 90",
        "south-east, 135",
        "S, 180",
        "SW, 225",
        "west, 270",
        "North West, 315",
        "noroeste, 315",
        "SO, 225",
        "O, 270",
        "Este, 90",
        "247.5, 247.5",
        "360°, 360",
        "7, 7"
    })
    void directions_are_read_by_name_and_by_degrees(String text, double degrees) {
        assertThat(Compass.azimuth(text)).contains(degrees);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "up", "361", "-1", "NNE", "12,5", "1e2"})
    void anything_else_is_no_direction(String text) {
        assertThat(Compass.azimuth(text)).isEmpty();
    }
}
