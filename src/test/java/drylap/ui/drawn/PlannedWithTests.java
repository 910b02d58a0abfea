package drylap.ui.drawn;

import static drylap.ui.drawn.QuayPlan.MONDAY;
import static drylap.ui.drawn.QuayPlan.TUESDAY;
import static drylap.ui.drawn.QuayPlan.at;
import static org.assertj.core.api.Assertions.assertThat;

import drylap.kernel.SiteId;
import drylap.planning.PlanForecast;
import drylap.speech.Speech;
import drylap.weather.ForecastOrigin;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The plan ends on Tuesday at 15:30; the folder has a forecast of Quay Nine alone. */
class PlannedWithTests {
    private static final SiteId QUAY = new SiteId("Q");
    private static final SiteId MILL = new SiteId("M");

    private final FolderShown shown = new QuayPlan().shown();

    @Test
    void a_plan_names_the_forecast_of_each_site_and_where_it_ends() {
        var planned = PlannedWith.of(
                Speech.ENGLISH,
                shown,
                List.of(new PlanForecast(MILL, null, null), new PlanForecast(QUAY, null, at(TUESDAY, "12:00"))));

        assertThat(planned.lines())
                .containsExactly(
                        "No forecast: Mill Row. All hours there were counted as open.",
                        "Planned with the job folder\u2019s own forecast: Quay Nine.",
                        "The forecast ends Tue 14 Apr 12:00: Quay Nine. Hours after it were counted as open.");
        assertThat(planned.changed()).isEmpty();
    }

    @Test
    void sites_of_one_forecast_stand_in_one_line_and_one_that_goes_by_another_by_now_is_told() {
        var morning = new ForecastOrigin(7, "MET Norway, Locationforecast", at(MONDAY, "06:00"), at(MONDAY, "06:20"));

        var planned = PlannedWith.of(
                Speech.ENGLISH,
                shown,
                List.of(
                        new PlanForecast(MILL, morning, at(TUESDAY, "23:00")),
                        new PlanForecast(QUAY, morning, at(TUESDAY, "23:00"))));

        assertThat(planned.lines())
                .containsExactly("Planned with MET Norway, Locationforecast of Mon 13 Apr 06:00: Mill Row, Quay Nine.");
        assertThat(planned.changed())
                .extracting(PlannedWith.Changed::words)
                .containsExactly(
                        "Mill Row: the job folder\u2019s own forecast",
                        "Quay Nine: the job folder\u2019s own forecast");
    }

    @Test
    void a_source_that_does_not_say_when_it_was_made_says_when_it_was_fetched() {
        var origin = new ForecastOrigin(7, "Open-Meteo, hourly", null, at(MONDAY, "06:20"));

        assertThat(PlannedWith.of(Speech.ENGLISH, shown, List.of(new PlanForecast(QUAY, origin, at(TUESDAY, "23:00"))))
                        .lines())
                .containsExactly("Planned with Open-Meteo, hourly, fetched Mon 13 Apr 06:20: Quay Nine.");
    }

    @Test
    void of_a_plan_from_before_it_was_written_down_nothing_is_said() {
        assertThat(PlannedWith.of(Speech.ENGLISH, shown, List.of())).isEqualTo(PlannedWith.NOTHING);
        assertThat(PlannedWith.of(
                        Speech.ENGLISH, QuayPlan.unplannedFolder(), List.of(new PlanForecast(QUAY, null, null))))
                .isEqualTo(PlannedWith.NOTHING);
    }
}
