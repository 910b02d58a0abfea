package drylap.ui.drawn;

import static org.assertj.core.api.Assertions.assertThat;

import drylap.kernel.Language;
import drylap.kernel.Reading;
import drylap.sites.OpeningNote;
import drylap.speech.Speech;
import drylap.windowschedule.Outcomes;
import drylap.windowschedule.SiteWithWalls;
import java.util.Set;
import org.junit.jupiter.api.Test;

class ScheduleWordsTests {
    @Test
    void a_note_says_what_the_schedule_says_and_no_more() {
        assertThat(ScheduleWords.note(Speech.ENGLISH, new OpeningNote("A", 900, null, "1/A5.1", "", "", "tempered")))
                .isEqualTo("mark A; sill 900 mm above the floor; head detail 1/A5.1; tempered.");
        assertThat(ScheduleWords.note(Speech.ENGLISH, new OpeningNote("A", null, 4200, "", "", "", "")))
                .isEqualTo("mark A; 4200 mm along the wall.");
    }

    @Test
    void a_note_is_said_in_spanish_too() {
        var spanish = new Speech(Reading.USUAL.in(Language.SPANISH));
        assertThat(ScheduleWords.note(spanish, new OpeningNote("A", 900, 4200, "1/A5.1", "2", "3", "tempered")))
                .isEqualTo("marca A; alféizar a 900 mm sobre el piso; a 4200 mm a lo largo del muro; "
                        + "detalle de dintel 1/A5.1; detalle de jamba 2; detalle de alféizar 3; tempered.");
    }

    @Test
    void what_an_opening_becomes_is_told_with_its_row() {
        var outcome = Outcomes.of(
                SiteWithWalls.draft("Mark,RO W (mm),RO H (mm),Floor,Elevation\nA,900,1500,2,N\n"),
                SiteWithWalls.folder(),
                Set.of());
        assertThat(ScheduleWords.lines(Speech.ENGLISH, outcome))
                .extracting(
                        ScheduleWords.Line::row,
                        ScheduleWords.Line::opening,
                        ScheduleWords.Line::place,
                        ScheduleWords.Line::size)
                .containsExactly(org.assertj.core.api.Assertions.tuple(2, "A", "north, level 2", "900 × 1500 mm"));
        assertThat(ScheduleWords.counts(Speech.ENGLISH, outcome))
                .contains("1 rows: 1 openings new, 0 changed", "3 of the site", "Nothing is wrong.");
    }
}
