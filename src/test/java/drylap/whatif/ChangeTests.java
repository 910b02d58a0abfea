package drylap.whatif;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import drylap.crews.Shift;
import drylap.kernel.CrewId;
import drylap.kernel.FacadeId;
import drylap.kernel.OpeningId;
import drylap.kernel.SiteId;
import drylap.kernel.TimeWindow;
import drylap.planning.JobFixture;
import drylap.planning.JobFolder;
import drylap.sites.Opening;
import drylap.weather.Forecast;
import drylap.weather.ForecastHour;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;

class ChangeTests {
    private static final LocalDate TUESDAY = JobFixture.MONDAY.plusDays(1);
    private static final CrewId WINDOW = new CrewId("window-1");
    private final JobFolder folder = JobFixture.job(40, 3);
    private final SiteId site = folder.sites().getFirst().id();

    /** Shifts put back, nothing differs; likewise for the other parts. */
    @Test
    void an_added_crew_has_the_hours_of_its_model_from_the_date_on() {
        JobFolder changed = new AddCrew(new CrewId("more"), WINDOW, TUESDAY).applyTo(folder);
        List<LocalDate> model = dates(folder, WINDOW).stream()
                .filter(date -> !date.isBefore(TUESDAY))
                .toList();
        assertThat(dates(changed, new CrewId("more"))).isNotEmpty().isEqualTo(model);
        assertThat(changed.crews()).hasSize(folder.crews().size() + 1).containsAll(folder.crews());
        assertThat(changed.withCrews(folder.crews()).withShifts(folder.shifts()))
                .isEqualTo(folder);
    }

    @Test
    void a_crew_that_is_there_is_not_added_and_one_that_is_not_is_no_model() {
        assertThatThrownBy(() -> new AddCrew(WINDOW, WINDOW, TUESDAY).applyTo(folder))
                .hasMessageContaining("crew window-1 already");
        assertThatThrownBy(() -> new AddCrew(new CrewId("more"), new CrewId("none"), TUESDAY).applyTo(folder))
                .hasMessageContaining("no crew none");
    }

    @Test
    void a_dropped_day_of_a_crew_takes_that_shift_alone() {
        JobFolder changed = new DropDay(TUESDAY, WINDOW, null).applyTo(folder);
        assertThat(folder.shifts())
                .filteredOn(shift -> !changed.shifts().contains(shift))
                .singleElement()
                .satisfies(shift -> {
                    assertThat(shift.crew()).isEqualTo(WINDOW);
                    assertThat(shift.date()).isEqualTo(TUESDAY);
                });
        assertThat(changed.withShifts(folder.shifts())).isEqualTo(folder);
    }

    @Test
    void a_dropped_day_of_the_only_site_takes_all_crews() {
        JobFolder one = drylap.planning.JobFixture.twoWallsOfTwoLevels();
        JobFolder changed = new DropDay(TUESDAY, null, one.sites().getFirst().id()).applyTo(one);
        assertThat(changed.shifts()).noneMatch(shift -> shift.date().equals(TUESDAY));
        assertThat(changed.shifts()).hasSize(one.shifts().size() - one.crews().size());
    }

    @Test
    void a_day_on_which_nobody_comes_is_not_dropped() {
        assertThatThrownBy(() -> new DropDay(TUESDAY.minusDays(9), WINDOW, null).applyTo(folder))
                .hasMessageContaining("no crew of window-1 has a shift");
    }

    @Test
    void a_delay_moves_the_windows_of_its_facade_only() {
        FacadeId wall = folder.facades().getFirst().id();
        JobFolder changed = new DelayDelivery(wall, null, 3).applyTo(folder);
        for (int i = 0; i < folder.openings().size(); i++) {
            Opening before = folder.openings().get(i);
            int days = before.facade().equals(wall) ? 3 : 0;
            assertThat(changed.openings().get(i))
                    .isEqualTo(before.deliveredOn(before.deliveredOn().plusDays(days)));
        }
        assertThat(changed.withOpenings(folder.openings())).isEqualTo(folder);
    }

    @Test
    void a_delay_of_one_opening_moves_that_one() {
        OpeningId id = folder.openings().get(5).id();
        JobFolder changed = new DelayDelivery(null, id, 1).applyTo(folder);
        assertThat(changed.openings())
                .filteredOn(opening -> !folder.openings().contains(opening))
                .singleElement()
                .satisfies(opening -> assertThat(opening.id()).isEqualTo(id));
    }

    @Test
    void rain_is_put_into_the_touched_hours_of_one_site() {
        Instant from = JobFixture.MONDAY.atTime(9, 30).atZone(JobFixture.ZONE).toInstant();
        TimeWindow when = new TimeWindow(from, from.plusSeconds(3600));
        JobFolder wet = new OtherRain(site, when, true).applyTo(folder);
        JobFolder dry = new OtherRain(site, when, false).applyTo(folder);
        assertThat(hours(wet).subList(9, 11)).allMatch(hour -> hour.rainProbability() == 1 && hour.rainMm() >= 2.5);
        assertThat(hours(dry).subList(9, 11)).allMatch(hour -> hour.rainProbability() == 0 && hour.rainMm() == 0);
        assertThat(hours(wet).subList(0, 9)).isEqualTo(hours(folder).subList(0, 9));
        assertThat(hours(wet).subList(11, 90)).isEqualTo(hours(folder).subList(11, 90));
        assertThat(wet.withForecasts(folder.forecasts())).isEqualTo(folder);
    }

    @Test
    void percent_change_amounts_and_nothing_else() {
        JobFolder changed = new RainByPercent(50).applyTo(folder);
        for (int i = 0; i < hours(folder).size(); i++) {
            ForecastHour before = hours(folder).get(i);
            ForecastHour after = hours(changed).get(i);
            assertThat(after.rainMm()).isEqualTo(before.rainMm() * 1.5);
            assertThat(Rains.with(after, before.rainMm(), after.rainProbability()))
                    .isEqualTo(before);
        }
    }

    @Test
    void another_forecast_takes_the_place_of_the_first() {
        List<Forecast> none =
                folder.sites().stream().map(one -> Forecast.none(one.id())).toList();
        assertThat(new OtherForecast(none).applyTo(folder)).isEqualTo(folder.withForecasts(none));
    }

    @Test
    void a_scenario_that_leaves_nobody_a_day_is_refused() {
        JobFolder one = folder.withShifts(folder.shifts().subList(0, 1));
        Shift only = one.shifts().getFirst();
        Scenario all = new Scenario("nobody", List.of(new DropDay(only.date(), only.crew(), null)));
        assertThatThrownBy(() -> all.applyTo(one)).hasMessageContaining("nobody");
    }

    private static List<LocalDate> dates(JobFolder folder, CrewId crew) {
        return folder.shifts().stream()
                .filter(shift -> shift.crew().equals(crew))
                .map(Shift::date)
                .toList();
    }

    private List<ForecastHour> hours(JobFolder of) {
        return of.forecasts().getFirst().hours();
    }
}
