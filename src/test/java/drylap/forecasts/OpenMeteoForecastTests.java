package drylap.forecasts;

import static drylap.forecasts.ForecastSource.OPEN_METEO;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import drylap.weather.ForecastHour;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;

class OpenMeteoForecastTests {
    private final Payload golden = Payload.of(OPEN_METEO);
    private final List<ForecastHour> hours = golden.sound().forecast().hours();

    @Test
    void rain_and_its_chance_belong_to_the_hour_before_their_time() {
        assertThat(hours).hasSize(5);
        assertThat(hours.getFirst())
                .returns(Instant.parse("2026-11-25T00:00:00Z"), ForecastHour::start)
                .returns(0.4, ForecastHour::rainMm)
                .returns(0.3, ForecastHour::rainProbability)
                .returns(4.1, ForecastHour::temperatureC)
                .returns(230.0, ForecastHour::windFromDeg)
                .returns(80.0, ForecastHour::relativeHumidity);
        assertThat(hours.getFirst().windMs()).isCloseTo(3.086667, within(1e-6));
        assertThat(hours.getLast()).returns(0.8, ForecastHour::rainMm).returns(3.6, ForecastHour::temperatureC);
    }

    @Test
    void the_larger_gust_of_both_ends_of_an_hour_counts() {
        assertThat(hours.get(0).gustMs()).isCloseTo(15, within(1e-9));
        assertThat(hours.get(1).gustMs()).isCloseTo(15, within(1e-9));
        assertThat(hours.get(2).gustMs()).isCloseTo(14, within(1e-9));
    }

    @Test
    void the_last_time_has_no_rain_yet_and_that_is_told() {
        assertThat(golden.sound().remarks())
                .containsExactly("ends at Tue 24 Nov 21:00: the next hour has no rain amount, chance of rain");
    }

    @Test
    void it_does_not_say_when_it_was_made() {
        assertThat(golden.sound().issuedAt()).isNull();
    }

    @Test
    void local_times_run_at_the_one_offset_told_also_where_the_clocks_change() {
        // 2026-11-01, 02:00 daylight time, is 01:00 standard time in Seattle
        Payload local = golden.change("2026-11-25", "2026-11-01")
                .change("\"utc_offset_seconds\": 0", "\"utc_offset_seconds\": -25200");

        assertThat(local.sound().forecast().hours())
                .extracting(hour -> hour.start().toString())
                .containsExactly(
                        "2026-11-01T07:00:00Z",
                        "2026-11-01T08:00:00Z",
                        "2026-11-01T09:00:00Z",
                        "2026-11-01T10:00:00Z",
                        "2026-11-01T11:00:00Z");
    }

    @Test
    void seconds_since_1970_need_no_offset() {
        Payload unix = golden.change("iso8601", "unixtime")
                .change(
                        "\"2026-11-25T00:00\",\"2026-11-25T01:00\",\"2026-11-25T02:00\",\"2026-11-25T03:00\",\"2026-11-25T04:00\",\"2026-11-25T05:00\"",
                        "1795564800,1795568400,1795572000,1795575600,1795579200,1795582800")
                .change("\"utc_offset_seconds\": 0", "\"utc_offset_seconds\": -28800");

        assertThat(unix.sound().forecast().hours()).isEqualTo(hours);
    }

    @Test
    void names_of_before_2023_and_other_units_are_read() {
        Payload old = golden.change("wind_speed_10m", "windspeed_10m")
                .change("wind_gusts_10m", "windgusts_10m")
                .change("wind_direction_10m", "winddirection_10m")
                .change("relative_humidity_2m", "relativehumidity_2m")
                .change("\"windspeed_10m\": \"km/h\"", "\"windspeed_10m\": \"kn\"")
                .change("[11.112,", "[6,")
                .change("\"precipitation\": \"mm\"", "\"precipitation\": \"inch\"")
                .change("[0.0,0.4,", "[0.0,0.1,")
                .change("\"temperature_2m\": \"°C\"", "\"temperature_2m\": \"°F\"")
                .change("[4.1,", "[50,");

        ForecastHour first = old.sound().forecast().hours().getFirst();
        assertThat(first.windMs()).isCloseTo(3.086667, within(1e-6));
        assertThat(first.rainMm()).isCloseTo(2.54, within(1e-9));
        assertThat(first.temperatureC()).isCloseTo(10, within(1e-9));
    }
}
