package drylap.ui.drawn;

import static org.assertj.core.api.Assertions.assertThat;

import drylap.crews.Absence;
import drylap.crews.ShiftsLeft;
import drylap.kernel.CrewId;
import drylap.speech.Speech;
import java.time.Instant;
import java.time.LocalTime;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class CrewsSheetTests {
    private static Absence away(@Nullable String from, @Nullable String until) {
        return new Absence(
                7,
                new CrewId("W1"),
                QuayPlan.MONDAY,
                from == null ? null : LocalTime.parse(from),
                until == null ? null : LocalTime.parse(until),
                "ill",
                "Ida",
                Instant.EPOCH);
    }

    /** As the desk would show it: the folder's shifts with the absences laid over. */
    private static CrewsSheet sheet(Absence... absences) {
        var shown = QuayPlan.unplannedFolder();
        var folder = shown.folder();
        var now = folder.withShifts(ShiftsLeft.of(folder.shifts(), List.of(absences)));
        return CrewsSheet.of(Speech.ENGLISH, new FolderShown(shown.stored(), now, PlanChoice.NONE), List.of(absences));
    }

    @Test
    void a_crew_has_its_days_with_their_hours() {
        var crew = sheet().crews().getFirst();

        assertThat(crew.trade()).isEqualTo("window crew");
        assertThat(crew.days())
                .extracting(CrewsSheet.Day::when, CrewsSheet.Day::hours)
                .containsExactly(
                        org.assertj.core.groups.Tuple.tuple(
                                "Mon 13 Apr", "07:00 to 15:30, break 11:30 to 12:00, overtime to 17:00"),
                        org.assertj.core.groups.Tuple.tuple("Tue 14 Apr", "07:00 to 15:30, break 11:30 to 12:00"));
    }

    @Test
    void a_day_of_absence_stays_on_the_sheet() {
        var day = sheet(away(null, null)).crews().getFirst().days().getFirst();

        assertThat(day.works()).isFalse();
        assertThat(day.hours()).isEqualTo("does not come");
        assertThat(day.away()).containsExactly(new CrewsSheet.Away(7, "away all day: ill (Ida)"));
    }

    @Test
    void part_of_a_day_shows_what_is_left() {
        var day = sheet(away("12:30", "15:30")).crews().getFirst().days().getFirst();

        assertThat(day.hours()).isEqualTo("07:00 to 12:30, break 11:30 to 12:00");
        assertThat(day.away().getFirst().words()).isEqualTo("away 12:30 to 15:30: ill (Ida)");
    }
}
