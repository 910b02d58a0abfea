package drylap.climate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import drylap.kernel.Rules;
import drylap.kernel.SiteId;
import drylap.weather.Forecast;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class MonthlyNormalsTests {
    private static final SiteId QUAY = new SiteId("quay");

    /** 20 of 31 wet days, 155 mm: the hours that follow give back both. */
    @Test
    void monthly_normals_come_back_from_the_hours_made_of_them() {
        MonthlyNormals january = new MonthlyNormals(null, 1, 155, 20);

        double dayWet = drylap.weather.RainChance.persistent(0.6, january.wetHours(0.6), 24);
        assertThat(dayWet * 31).isCloseTo(20, within(1e-6));
        assertThat(january.wetHours(0.6) * january.millimetresAnHour(0.6) * 24 * 31)
                .isCloseTo(155, within(1e-6));
    }

    @Test
    void what_a_month_cannot_have_is_refused_with_what_would_be_accepted() {
        assertThatThrownBy(() -> new MonthlyNormals(null, 2, 10, 29)).hasMessageContaining("outside 0..28");
        assertThatThrownBy(() -> new MonthlyNormals(null, 13, 10, 2)).hasMessageContaining("month 13");
        assertThatThrownBy(() -> new MonthlyNormals(null, 4, 10, 2, 31, 0)).hasMessageContaining("cold days");
    }

    /** By hand: 6 of 30 days cold, 3 of 30 gusty, each for itself: 0.2 + 0.8 × 0.1. */
    @Test
    void cold_and_gusts_take_days_each_for_itself() {
        assertThat(new MonthlyNormals(null, 4, 10, 2, 6, 3).lostDays()).isCloseTo(0.28, within(1e-12));
    }

    @Test
    void a_site_with_normals_of_its_own_has_none_of_the_others() {
        Climate climate = climate(List.of(new MonthlyNormals(null, 1, 100, 15), new MonthlyNormals(QUAY, 2, 0, 0)));

        assertThat(climate.in(2).wet()).isZero();
        assertThat(climate.in(1).wet()).isEqualTo(0.08);
    }

    @Test
    void months_that_are_missing_are_assumed_and_that_is_said() {
        assertThat(climate(List.of(new MonthlyNormals(null, 1, 100, 15))).words())
                .contains("assumed", "11 months");
        assertThat(climate(List.of(new MonthlyNormals(null, 1, 100, 15))).assumed())
                .isTrue();
        assertThat(climate(List.of()).assumed()).isTrue();
        assertThat(climate(IntStream.rangeClosed(1, 12)
                                .mapToObj(month -> new MonthlyNormals(null, month, 50, 10))
                                .toList())
                        .assumed())
                .isFalse();
    }

    private static Climate climate(List<MonthlyNormals> normals) {
        return Climate.of(QUAY, normals, Forecast.none(QUAY), Rules.STANDARD);
    }
}
