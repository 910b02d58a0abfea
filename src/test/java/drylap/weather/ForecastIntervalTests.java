package drylap.weather;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.Instant;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Source: ISO 8601 for intervals; the intervals and figures stand in open test data of the US weather service. */
class ForecastIntervalTests {
    @ParameterizedTest
    @CsvSource({"P2DT18H, 66", "P3DT7H, 79", "PT1H, 1", "PT12H, 12"})
    void a_length_of_days_and_hours_is_read(String length, int hours) {
        var interval = ForecastInterval.parse("2024-02-23T12:00:00+00:00/" + length);
        assertThat(interval.hours()).isEqualTo(hours);
        assertThat(interval.start()).isEqualTo("2024-02-23T12:00:00Z");
    }

    @Test
    void an_offset_is_heeded() {
        assertThat(ForecastInterval.parse("2024-02-23T12:00:00-06:00/PT6H").start())
                .isEqualTo(Instant.parse("2024-02-23T18:00:00Z"));
    }

    /** Rule of the US weather service: quantitative precipitation is a total over its interval. */
    @Test
    void a_total_is_split_evenly_over_its_hours() {
        var interval = ForecastInterval.parse("2024-02-23T12:00:00+00:00/PT6H");
        assertThat(interval.hourlyShare(32.426)).isCloseTo(5.404333, within(1e-6));
        assertThat(interval.hours() * interval.hourlyShare(32.426)).isCloseTo(32.426, within(1e-9));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "2024-02-23T12:00:00Z",
                "2024-02-23T12:00:00Z/P1M",
                "2024-02-23T12:00:00Z/PT0H",
                "2024-02-23T12:00:00Z/PT90M",
                "2024-02-23T12:00:00Z/PT-6H",
                "2024-02-23T12:00:00/PT1H",
                "/PT1H",
                ""
            })
    void anything_else_is_refused_with_what_would_be_accepted(String text) {
        assertThatThrownBy(() -> ForecastInterval.parse(text))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageStartingWith("'" + text + "' is no interval; accepted is a time with offset");
    }
}
