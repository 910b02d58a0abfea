package drylap.ui.drawn;

import static drylap.ui.drawn.QuayPlan.MONDAY;
import static drylap.ui.drawn.QuayPlan.TUESDAY;
import static org.assertj.core.api.Assertions.assertThat;

import drylap.kernel.OpeningId;
import drylap.kernel.Task;
import drylap.planning.UnplannedReason;
import drylap.speech.Speech;
import drylap.ui.drawn.OpeningSheet.Line;
import drylap.ui.drawn.OpeningSheet.Planned;
import drylap.ui.drawn.OpeningSheet.Standing;
import org.junit.jupiter.api.Test;

class OpeningPresenterTests {
    @Test
    void ticks_what_is_done_and_points_at_the_next_line() {
        OpeningSheet sheet = sheet("QW1-01", new QuayPlan());
        assertThat(sheet.lines().stream().filter(line -> line.standing() == Standing.DONE))
                .hasSize(5);
        assertThat(sheet.lines().stream().filter(line -> line.standing() == Standing.NEXT))
                .singleElement()
                .extracting(Line::number)
                .isEqualTo(6);
    }

    @Test
    void points_at_no_line_once_all_are_done() {
        assertThat(sheet("QW1-02", new QuayPlan()).lines())
                .extracting(Line::standing)
                .containsOnly(Standing.DONE);
    }

    @Test
    void rates_the_opening_in_words_and_says_why() {
        OpeningSheet sheet = sheet("QW1-01", new QuayPlan());
        assertThat(sheet.ratingCode()).isEqualTo("R0");
        assertThat(sheet.mayBeLeft()).isFalse();
        assertThat(sheet.weaknesses()).isNotEmpty().anyMatch(words -> words.contains("head flange"));
    }

    @Test
    void draws_the_section_with_the_way_of_the_water() {
        OpeningSheet sheet = sheet("QW1-01", new QuayPlan());
        assertThat(sheet.section()).startsWith("<svg").contains("water-path");
        assertThat(sheet.tallSection()).startsWith("<svg").isNotEqualTo(sheet.section());
    }

    @Test
    void says_when_each_task_is_planned_or_why_it_is_not() {
        var plan = new QuayPlan()
                .visit("W1", MONDAY, "08:00", "08:31", Task.INSTALL, "QW1-01")
                .visit("P1", TUESDAY, "12:10", "12:20", Task.WRAP, "QW1-01")
                .without("QW1-01", Task.CLAD, UnplannedReason.HORIZON_FULL, "no siding crew is free");
        assertThat(sheet("QW1-01", plan).planned())
                .extracting(Planned::when)
                .containsExactly(
                        "Mon 13 Apr 08:00 to 08:31, crew W1",
                        "Tue 14 Apr 12:10 to 12:20, crew P1, beyond the forecast",
                        "not planned: every crew's days are full (no siding crew is free)");
    }

    @Test
    void says_so_where_there_is_no_plan() {
        assertThat(OpeningPresenter.sheet(Speech.ENGLISH, QuayPlan.unplannedFolder(), new OpeningId("QW2-01"))
                        .planned())
                .extracting(Planned::when)
                .containsOnly("no plan yet");
    }

    private static OpeningSheet sheet(String opening, QuayPlan plan) {
        return OpeningPresenter.sheet(Speech.ENGLISH, plan.shown(), new OpeningId(opening));
    }
}
