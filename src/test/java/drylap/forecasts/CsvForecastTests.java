package drylap.forecasts;

import static drylap.forecasts.ForecastSource.CSV;
import static org.assertj.core.api.Assertions.assertThat;

import drylap.weather.ForecastHour;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;

class CsvForecastTests {
    private final Payload golden = Payload.of(CSV);

    @Test
    void the_rows_of_the_site_are_read_over_the_hour_that_comes_twice() {
        List<ForecastHour> hours = golden.sound().forecast().hours();

        assertThat(hours)
                .extracting(ForecastHour::start)
                .containsExactly(
                        Instant.parse("2026-11-01T07:00:00Z"),
                        Instant.parse("2026-11-01T08:00:00Z"),
                        Instant.parse("2026-11-01T09:00:00Z"),
                        Instant.parse("2026-11-01T10:00:00Z"));
        assertThat(hours.getFirst())
                .isEqualTo(new ForecastHour(Instant.parse("2026-11-01T07:00:00Z"), 0.4, 0.3, 5, 8, 200, 9, 80));
        assertThat(golden.sound().remarks()).isEmpty();
    }

    @Test
    void a_file_of_one_site_needs_no_column_for_it() {
        var one = golden.change("mill,2026-11-01T00:00-07:00,9,0.9,9,12,90,5,99\n", "")
                .change("site,", "")
                .change("quay,", "");

        assertThat(one.sound()).isEqualTo(golden.sound());
    }

    @Test
    void rows_may_stand_in_any_order_and_after_a_mark_of_utf_8() {
        List<String> lines = golden.text().lines().toList();
        String turned = String.join("\n", lines.get(0), lines.get(5), lines.get(3), lines.get(4), lines.get(2));

        assertThat(new Payload(CSV, "\uFEFF" + turned).sound()).isEqualTo(golden.sound());
    }
}
