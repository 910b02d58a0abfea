package drylap.intake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import drylap.planning.JobFolder;
import java.time.Instant;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;

/** The folder's week, Monday 2026-04-13, is in daylight saving time; 2026-12-07 is not. */
class ShiftedFolderTests {
    final JobFolder april = new SmallFolder().sound().folder();
    final JobFolder december = ShiftedFolder.toWeekOf(april, LocalDate.of(2026, 12, 7));

    @Test
    void dates_move_by_whole_weeks() {
        assertThat(december.shifts().getFirst().date()).isEqualTo("2026-12-07");
        assertThat(december.shifts().getLast().date()).isEqualTo("2026-12-08");
        assertThat(december.facades().getFirst().handoverDue()).isEqualTo("2026-12-11");
        assertThat(december.openings().getFirst().deliveredOn()).isEqualTo("2026-12-07");
        assertThat(december.published().getFirst().visit().date()).isEqualTo("2026-12-07");
    }

    @Test
    void clock_times_stay_though_the_offset_changes() {
        assertThat(december.forecasts().getFirst().hours().getFirst().start()).isEqualTo("2026-12-07T15:00:00Z");
        assertThat(december.published().getFirst().visit().start()).isEqualTo("2026-12-07T16:00:00Z");
        assertThat(december.openings().getFirst().doneAt()).isEqualTo(Instant.parse("2026-12-06T23:30:00Z"));
        assertThat(december.shifts().getFirst().startsAt()).isEqualTo("2026-12-07T15:00:00Z");
    }

    @Test
    void hours_of_a_forecast_stay_one_after_another_over_the_night_the_clocks_change() {
        var spring = ShiftedFolder.toWeekOf(GeneratedFolder.of(8, 1, 1), LocalDate.of(2026, 3, 2));
        var hours = spring.forecasts().getFirst().hours();
        assertThat(hours.getFirst().start()).isEqualTo("2026-03-02T08:00:00Z");
        assertThat(hours).hasSize(240);
    }

    @Test
    void there_and_back_is_the_same_folder() {
        assertThat(ShiftedFolder.toWeekOf(december, LocalDate.of(2026, 4, 13))).isEqualTo(april);
    }

    @Test
    void a_week_starts_on_monday() {
        assertThatThrownBy(() -> ShiftedFolder.toWeekOf(april, LocalDate.of(2026, 12, 8)))
                .hasMessage("2026-12-08 is a TUESDAY; accepted is a Monday");
    }
}
