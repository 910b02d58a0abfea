package drylap.intake;

import static org.assertj.core.api.Assertions.assertThat;

import drylap.weather.ForecastHour;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** One chance of rain that is told for several hours together. */
class ForecastPeriodTests {
    private static final String SEVEN = "2026-04-13T07:00-07:00";

    @Test
    void hours_share_the_chance_of_the_period_that_they_name() {
        var hours =
                small("", SEVEN, "0.1").sound().folder().forecasts().getFirst().hours();

        assertThat(hours).extracting(ForecastHour::chanceFrom).containsOnly(Instant.parse("2026-04-13T14:00:00Z"));
        assertThat(hours.getLast().sharesChanceWith(hours.getFirst())).isTrue();
    }

    @Test
    void a_period_that_began_before_the_first_row_is_read() {
        var hours = small("2026-04-13T02:00-07:00", "2026-04-13T02:00-07:00", "0.1")
                .sound()
                .folder()
                .forecasts()
                .getFirst()
                .hours();

        assertThat(hours).extracting(ForecastHour::chanceFrom).containsOnly(Instant.parse("2026-04-13T09:00:00Z"));
    }

    @Test
    void the_column_is_written_only_where_a_chance_is_shared() {
        assertThat(written(new SmallFolder())).doesNotContain("chance_from");
        assertThat(written(small("", SEVEN, "0.1"))).contains("relative_humidity,chance_from", "90," + SEVEN);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        2026-04-13T08:00-07:00 | '' | 0.7 | forecast.csv:2 chance_from: is after hour_start (2026-04-13T08:00-07:00) – blank, or a time up to 2026-04-13T07:00-07:00 is accepted
        '' | 2026-04-13T06:00-07:00 | 0.1 | forecast.csv:3 chance_from: is neither the row's own hour nor that of the hour before (2026-04-13T06:00-07:00) – blank, or 2026-04-13T07:00-07:00 is accepted
        '' | 2026-04-13T07:00-07:00 | 0.7 | forecast.csv:3 rain_probability: differs within one chance_from (0.7) – 0.1 is accepted
        '' | noon                   | 0.7 | forecast.csv:3 chance_from: is not a time with an offset (noon) – a time such as 2026-04-13T07:00-07:00, from the year 2000 to 2099, is accepted
        """)
    void a_period_that_cannot_be_is_named(String first, String second, String probability, String message) {
        assertThat(small(first, second, probability).problems()).containsExactly(message);
    }

    private static SmallFolder small(String first, String second, String secondProbability) {
        return new SmallFolder()
                .change("forecast.csv", "relative_humidity\n", "relative_humidity,chance_from\n")
                .change("forecast.csv", "250,9,80", "250,9,80," + first)
                .change("forecast.csv", "240,9.5,90", "240,9.5,90," + second)
                .change("forecast.csv", "0.6,0.7", "0.6," + secondProbability);
    }

    private static String written(SmallFolder small) {
        return new String(FolderWriter.files(small.sound().folder()).get("forecast.csv"), StandardCharsets.UTF_8);
    }
}
