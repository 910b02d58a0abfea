package drylap.weather;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntToDoubleFunction;
import org.junit.jupiter.api.Test;

/** The 67th percentile of the yearly worst spells and at least ten years: ISO 15927-3, from memory. Figures worked by hand. */
class SpellIndexTests {
    private static final Instant START = Instant.parse("2001-01-01T00:00:00Z");

    /** Yearly worst spells of 1 to 12 units lie at .67 x 11 = 7.37: 8.37 units; a smaller second spell each year adds .5 a year. */
    @Test
    void the_spell_index_is_the_67th_percentile_of_the_yearly_worst() {
        var index = SpellIndex.of(years(12, year -> year + 1), 180).orElseThrow();
        double unit = DrivingRain.hourly(1, 1, 180, 180);
        assertThat(index.years()).isEqualTo(12);
        assertThat(index.spell()).isCloseTo(8.37 * unit, within(1e-9));
        assertThat(index.annual()).isCloseTo((6.5 + 0.5) * unit, within(1e-9));
    }

    @Test
    void fewer_than_ten_whole_years_have_none() {
        assertThat(SpellIndex.of(years(9, _ -> 1), 180)).isEmpty();
        assertThat(SpellIndex.of(years(10, _ -> 1), 180)).isPresent();
        assertThat(SpellIndex.of(List.of(), 180)).isEmpty();
    }

    @Test
    void a_wall_that_no_rain_reaches_has_an_index_of_nothing() {
        assertThat(SpellIndex.of(years(10, _ -> 3), 0)).contains(new SpellIndex(10, 0, 0));
    }

    /** One wet hour each March with a wind of so many m/s, and one of half a metre a second in July. */
    private static List<ForecastHour> years(int count, IntToDoubleFunction wind) {
        List<ForecastHour> hours = new ArrayList<>();
        for (int year = 0; year < count; year++)
            for (int h = 0; h < 8766; h++) {
                double windMs = h == 1500 ? wind.applyAsDouble(year) : h == 4500 ? 0.5 : 0;
                hours.add(new ForecastHour(
                        START.plusSeconds(3600L * (8766L * year + h)), windMs > 0 ? 1 : 0, 1, windMs, 0, 180, 10, 80));
            }
        return hours;
    }
}
