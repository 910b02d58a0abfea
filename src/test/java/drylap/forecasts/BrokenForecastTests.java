package drylap.forecasts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** An answer is spoilt in one place, and the first problem says where, what, and what would be accepted. */
class BrokenForecastTests {
    private static final String MIB = "1048576";

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        US_WEATHER_SERVICE | "updateTime"        | "updated"          | properties.updateTime: is missing – a text is accepted
        US_WEATHER_SERVICE | 11:40:54+00:00"     | 11:40:54"          | properties.updateTime: is no time (2026-11-25T11:40:54) – a time with its offset is accepted
        US_WEATHER_SERVICE | "properties"        | "props"            | properties: is missing – an object is accepted
        US_WEATHER_SERVICE | "geometry": {       | "geometry": null, "g": { | geometry: is null – an object is accepted
        US_WEATHER_SERVICE | "quantitativePrecipitation" | "qpf"      | properties.quantitativePrecipitation: is missing – an object is accepted
        US_WEATHER_SERVICE | wmoUnit:mm          | wmoUnit:furlong    | properties.quantitativePrecipitation: is told in an unknown unit (wmoUnit:furlong) – one of the units inch, mm is accepted
        US_WEATHER_SERVICE | "windSpeed": {"uom": "wmoUnit:km_h-1", | "windSpeed": { | properties.windSpeed.uom: is missing – a text is accepted
        US_WEATHER_SERVICE | "value": 32.426     | "value": -1        | properties.quantitativePrecipitation.values[0].value: is negative (-1) – a number of mm from 0 to 500 is accepted
        US_WEATHER_SERVICE | "value": 60}        | "value": 101}      | properties.probabilityOfPrecipitation.values[0].value: is too large (101) – a number of percent from 0 to 100 is accepted
        US_WEATHER_SERVICE | "value": 320}       | "value": 361}      | properties.windDirection.values[0].value: is too large (361) – a number of degrees from 0 to 360 is accepted
        US_WEATHER_SERVICE | "value": 11.112     | "value": -3.6      | properties.windSpeed.values[0].value: is negative (-1) – a number of m/s from 0 to 150 is accepted
        US_WEATHER_SERVICE | "value": 11.112     | "value": "10 mph"  | properties.windSpeed.values[0].value: holds "10 mph" – a number is accepted
        US_WEATHER_SERVICE | "value": 5}         | "v": 5}            | properties.temperature.values[1].value: is missing – a number is accepted
        US_WEATHER_SERVICE | "value": 5}         | "value": 1e999}    | properties.temperature.values[1].value: is not finite – a number of °C from -90 to 70 is accepted
        US_WEATHER_SERVICE | 18:00:00+00:00/P2DT18H", "value": 20 | 17:00:00+00:00/P2DT18H", "value": 20 | properties.probabilityOfPrecipitation.values[1].value: tells the chance of rain of the hour from 2026-11-25T17:00:00Z again – each hour once is accepted
        US_WEATHER_SERVICE | 12:00:00+00:00/PT2H | 12:00:00+00:00/PT90M | properties.temperature.values[0]: has a validTime that is no interval (2026-11-25T12:00:00+00:00/PT90M) – a time with offset, a slash and whole hours, such as 2024-02-23T12:00:00Z/PT6H, is accepted
        US_WEATHER_SERVICE | 12:00:00+00:00/PT2H | 12:00:00+00:00/PT-2H | properties.temperature.values[0]: has a validTime that is no interval (2026-11-25T12:00:00+00:00/PT-2H) – a time with offset, a slash and whole hours, such as 2024-02-23T12:00:00Z/PT6H, is accepted
        US_WEATHER_SERVICE | 14:00:00+00:00/P2DT22H | 14:30:00+00:00/P2DT22H | properties.temperature.values[1].value: is out of step (2026-11-25T14:30:00Z) – whole hours from 2026-11-25T12:00:00Z is accepted
        US_WEATHER_SERVICE | 00:00:00+00:00/P2DT12H | 00:00:00+00:00/P999D | properties.quantitativePrecipitation.values[2]: has an interval too long (2026-11-26T00:00:00+00:00/P999D) – at most 960 hours is accepted
        US_WEATHER_SERVICE | [[[-122.34,47.61]   | [[[47.61,-122.34]  | geometry: is no place on Earth (latitude -122.34, longitude 47.61) – a place within 50 km of the site (47.6062, -122.3321), latitude and longitude not swapped is accepted
        US_WEATHER_SERVICE | [[[-122.34,47.61]   | [[[-122.34,45.61]  | geometry: is 222 km from the site – a place within 50 km of the site (47.6062, -122.3321), latitude and longitude not swapped is accepted
        US_WEATHER_SERVICE | "gridX": 125        | "gridX": 125, "gridX": 126 | line 6, column 43: is no JSON (Duplicate Object property "gridX") – whole JSON in UTF-8 is accepted
        OPEN_METEO | "precipitation": [          | "rain": [          | hourly.precipitation: is missing – a list is accepted
        OPEN_METEO | "wind_gusts_10m": [         | "gusts": [         | hourly.wind_gusts_10m: is missing – a list is accepted
        OPEN_METEO | "precipitation": "mm"       | "precipitation": "cm" | hourly_units.precipitation: is an unknown unit (cm) – one of the units inch, mm is accepted
        OPEN_METEO | "wind_speed_10m": "km/h",   | ''                 | hourly_units.wind_speed_10m: is missing – a text is accepted
        OPEN_METEO | [10,30,40,50,60,70]         | [10,30,40,50,60]   | hourly.precipitation_probability: has 5 values for 6 times – one value for each time is accepted
        OPEN_METEO | [10,30,                     | [10,130,           | hourly.precipitation_probability[1]: is too large (130) – a number of percent from 0 to 100 is accepted
        OPEN_METEO | [0.0,0.4,                   | [0.0,-0.4,         | hourly.precipitation[1]: is negative (-0.4) – a number of mm from 0 to 500 is accepted
        OPEN_METEO | [4.1,3.9,                   | ["warm",3.9,       | hourly.temperature_2m[0]: holds "warm" – a number is accepted
        OPEN_METEO | T02:00                      | T01:00             | hourly.time[2]: does not follow the hour before (2026-11-25T01:00:00Z after 2026-11-25T01:00:00Z) – one time an hour, in order, at the one offset of utc_offset_seconds also where the clocks change, is accepted
        OPEN_METEO | "2026-11-25T01:00","2026-11-25T02:00" | "2026-11-25T02:00","2026-11-25T01:00" | hourly.time[1]: does not follow the hour before (2026-11-25T02:00:00Z after 2026-11-25T00:00:00Z) – one time an hour, in order, at the one offset of utc_offset_seconds also where the clocks change, is accepted
        OPEN_METEO | T02:00                      | T02:00Z            | hourly.time[2]: is no time (2026-11-25T02:00Z) – a time such as 2026-11-25T00:00 is accepted
        OPEN_METEO | "utc_offset_seconds": 0,    | ''                 | utc_offset_seconds: is missing – a number is accepted
        OPEN_METEO | "latitude": 47.6, "longitude": -122.33 | "latitude": 52.52, "longitude": 13.42 | the answer: is 8118 km from the site – a place within 50 km of the site (47.6062, -122.3321), latitude and longitude not swapped is accepted
        MET_NORWAY | "updated_at"                | "made_at"          | properties.meta.updated_at: is missing – a text is accepted
        MET_NORWAY | "wind_speed": "m/s"         | "wind_speed": "beaufort" | properties.meta.units: wind_speed is an unknown unit (beaufort) – one of the units km/h, km_h-1, kn, m/s, m_s-1, mp/h, mph is accepted
        MET_NORWAY | "timeseries": [             | "timeseries": {}, "x": [ | properties.timeseries: is an object – a list is accepted
        MET_NORWAY | T13:00:00Z                  | T11:00:00Z         | properties.timeseries[1]: is not after the step before (2026-11-25T11:00:00Z after 2026-11-25T12:00:00Z) – steps in order, each at least an hour after the other, is accepted
        MET_NORWAY | "precipitation_amount": 3.6 | "precipitation_amount": -3.6 | properties.timeseries[2].data.next_6_hours.details.precipitation_amount: is negative (-3.6) – a number of mm from 0 to 500 is accepted
        MET_NORWAY | "probability_of_precipitation": 45.0 | "probability_of_precipitation": 145 | properties.timeseries[0].data.next_1_hours.details.probability_of_precipitation: is too large (145) – a number of percent from 0 to 100 is accepted
        MET_NORWAY | "wind_from_direction": 151.8, | ''               | properties.timeseries[0].data.instant.details.wind_from_direction: is missing – a number is accepted
        MET_NORWAY | "air_temperature": 7.5      | "air_temperature": null | properties.timeseries[0].data.instant.details.air_temperature: is null – a number is accepted
        MET_NORWAY | [-122.3321, 47.6062, 38]    | [47.6062, -122.3321, 38] | geometry: is no place on Earth (latitude -122.3321, longitude 47.6062) – a place within 50 km of the site (47.6062, -122.3321), latitude and longitude not swapped is accepted
        CSV | ,rain_probability,                 | ,chance,           | line 1, rain_probability: is missing from the header – the header hour_start,rain_mm,rain_probability,wind_m_s,gust_m_s,wind_from_deg,temperature_c,relative_humidity with site and chance_from where needed is accepted
        CSV | quay                               | pier               | the file: has no row for site quay – at least one row for it is accepted
        CSV | 01:00-08:00                        | 01:00              | line 5, hour_start: is no time with an offset (2026-11-01T01:00) – a time such as 2026-04-13T07:00-07:00 is accepted
        CSV | 01:00-08:00                        | 01:00-07:00        | line 5, rain_mm: tells the rain amount of the hour from 2026-11-01T08:00:00Z again – each hour once is accepted
        CSV | 0.6,0.5                            | 0.6,50             | line 5, rain_probability: is too large (5000) – a number of percent from 0 to 100 is accepted
        CSV | 0.6,0.5                            | 0.6mm,0.5          | line 5, rain_mm: is no number (0.6mm) – a number with a point, or a blank is accepted
        CSV | 0.6,0.5,7                          | 0.6,0.5            | line 5: has 8 cells – as many cells as the header is accepted
        """)
    void is_named_with_its_place_and_what_would_be_accepted(
            ForecastSource source, String from, String to, String message) {
        assertThat(Payload.of(source).change(from, to).problems()).first().isEqualTo(message);
    }

    @ParameterizedTest
    @EnumSource
    void cut_short_anywhere_it_is_refused_or_ends_where_it_was_cut(ForecastSource source) {
        byte[] whole = Payload.of(source).bytes();
        for (int length = 0; length < whole.length; length++) {
            byte[] cut = Arrays.copyOf(whole, length);
            assertThatCode(() -> ForecastReader.of(source).read(cut, Payload.QUAY))
                    .doesNotThrowAnyException();
            if (source != ForecastSource.CSV && source != ForecastSource.UPLOAD && length < whole.length - 2)
                assertThat(refused(source, cut)).isTrue();
        }
    }

    @ParameterizedTest
    @EnumSource
    void neither_nothing_nor_another_kind_of_file_is_a_forecast(ForecastSource source) {
        for (String text : new String[] {"", " ", "null", "[]", "42", "<html>blocked</html>", "{}", "{}{}", "\u0000"})
            assertThat(refused(source, text.getBytes(StandardCharsets.UTF_8)))
                    .as(text)
                    .isTrue();
        assertThat(refused(source, new byte[] {(byte) 0xC3, (byte) 0x28})).isTrue();
        assertThat(refused(source, ("[".repeat(100_000)).getBytes(StandardCharsets.UTF_8)))
                .isTrue();
    }

    @ParameterizedTest
    @EnumSource
    void more_than_eight_mebibytes_are_not_read(ForecastSource source) {
        byte[] whole = Payload.of(source).bytes();
        byte[] padded = Arrays.copyOf(whole, 8 * Integer.parseInt(MIB) + 1);
        Arrays.fill(padded, whole.length, padded.length, (byte) ' ');

        assertThat(ForecastReader.of(source).read(padded, Payload.QUAY))
                .isInstanceOfSatisfying(
                        ForecastReading.Refused.class,
                        refused -> assertThat(refused.summary())
                                .contains("has 8388609 bytes – at most 8 MiB is accepted"));
    }

    @Test
    void the_reason_that_a_source_gives_is_told() {
        var refusal =
                new Payload(ForecastSource.OPEN_METEO, "{\"error\":true,\"reason\":\"Latitude must be in range\"}");

        assertThat(refusal.problems())
                .containsExactly("reason: the source refuses: Latitude must be in range – hourly values is accepted");
    }

    @Test
    void many_problems_are_counted_and_the_first_are_listed() {
        String bad = Payload.of(ForecastSource.US_WEATHER_SERVICE)
                .change("\"value\"", "\"wert\"")
                .text();
        StringBuilder many = new StringBuilder("{\"validTime\": \"x\", \"value\": 1},");
        var read = new Payload(
                        ForecastSource.US_WEATHER_SERVICE,
                        bad.replace(
                                "\"relativeHumidity\": {\"uom\": \"wmoUnit:percent\", \"values\": []}",
                                "\"relativeHumidity\": {\"values\": ["
                                        + many.toString().repeat(50).replaceAll(",$", "") + "]}"))
                .read();

        assertThat(read).isInstanceOfSatisfying(ForecastReading.Refused.class, refused -> {
            assertThat(refused.problems()).hasSize(20);
            assertThat(refused.more()).isEqualTo(50 + 13 - 20);
        });
    }

    private static boolean refused(ForecastSource source, byte[] bytes) {
        return ForecastReader.of(source).read(bytes, Payload.QUAY) instanceof ForecastReading.Refused;
    }
}
