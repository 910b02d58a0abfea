package drylap.ui.drawn;

import static org.assertj.core.api.Assertions.assertThat;

import drylap.forecasts.ForecastProblem;
import drylap.forecasts.ForecastReading;
import drylap.forecasts.ForecastSource;
import drylap.forecasts.Payload;
import drylap.kernel.Rules;
import drylap.speech.Speech;
import java.time.Instant;
import org.junit.jupiter.api.Test;

/** The golden file tells four hours from midnight on, the night in which the clocks are put back. */
class ForecastFileTests {
    private static ForecastFile at(String now) {
        var read = (ForecastReading.Read) Payload.of(ForecastSource.UPLOAD).read();
        return ForecastFile.of(Speech.ENGLISH, read.forecast(), Payload.QUAY, Rules.STANDARD, Instant.parse(now));
    }

    @Test
    void a_file_says_what_it_tells_day_by_day() {
        ForecastFile file = at("2026-10-31T00:00:00Z");

        assertThat(file.summary()).isEqualTo("4 hours, from Sun 1 Nov 00:00 to Sun 1 Nov 03:00");
        assertThat(file.days()).singleElement().satisfies(day -> {
            assertThat(day.day()).isEqualTo("Sun 1 Nov");
            assertThat(day.hours()).isEqualTo(4);
        });
        assertThat(file.over()).isFalse();
    }

    @Test
    void a_file_that_is_past_says_so() {
        assertThat(at("2026-11-01T11:00:00Z").over()).isTrue();
        assertThat(at("2026-11-01T10:59:59Z").over()).isFalse();
    }

    @Test
    void a_problem_is_told_by_line_and_column() {
        assertThat(ForecastFile.Wrong.of(
                        Speech.ENGLISH, new ForecastProblem("line 5, rain_mm", "is no number (wet)", "a number")))
                .isEqualTo(new ForecastFile.Wrong("5", "rain_mm", "is no number (wet)", "a number"));
        assertThat(ForecastFile.Wrong.of(Speech.ENGLISH, new ForecastProblem("line 5", "has 8 cells", "9")))
                .isEqualTo(new ForecastFile.Wrong("5", "\u2013", "has 8 cells", "9"));
        assertThat(ForecastFile.Wrong.of(
                        Speech.ENGLISH, new ForecastProblem("the file", "is not UTF-8", "a file in UTF-8")))
                .isEqualTo(new ForecastFile.Wrong("\u2013", "\u2013", "the file is not UTF-8", "a file in UTF-8"));
    }
}
