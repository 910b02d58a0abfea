package drylap.ui.drawn;

import static drylap.ui.drawn.QuayPlan.MONDAY;
import static drylap.ui.drawn.QuayPlan.TUESDAY;
import static drylap.ui.drawn.QuayPlan.at;
import static org.assertj.core.api.Assertions.assertThat;

import drylap.audit.PlanBreaks;
import drylap.kernel.Task;
import drylap.speech.Speech;
import org.junit.jupiter.api.Test;

/** The quay folder's plan meets its rain, which falls from noon to two on Monday; the audit finds what it breaks. */
class BrokenVisitsTests {
    @Test
    void an_install_in_the_rain_is_named_with_its_time_its_crew_and_the_why() {
        BrokenVisits broken =
                broken(new QuayPlan().visit("W1", MONDAY, "12:10", "13:30", Task.INSTALL, "QW2-01"), MONDAY, "07:00");

        assertThat(broken.rows()).singleElement().satisfies(row -> {
            assertThat(row.opening()).hasToString("QW2-01");
            assertThat(row.task()).isEqualTo(Task.INSTALL);
            assertThat(row.when()).isEqualTo("Mon 13 Apr 12:10, W1");
            assertThat(row.why()).contains("of its minutes are shut, from Mon 13 Apr 2026 12:10 on");
        });
    }

    @Test
    void what_has_passed_undone_comes_first_with_all_that_is_wrong_of_a_visit_in_one_line() {
        BrokenVisits broken = broken(
                new QuayPlan()
                        .visit("P1", TUESDAY, "07:30", "07:45", Task.WRAP, "QW2-01")
                        .visit("W1", MONDAY, "08:00", "09:30", Task.INSTALL, "QW2-01"),
                TUESDAY,
                "07:00");

        assertThat(broken.rows()).hasSize(2);
        assertThat(broken.rows().getFirst().why()).isEqualTo("its time has passed, and it is not done");
        assertThat(broken.rows().getLast().task()).isEqualTo(Task.WRAP);
        assertThat(broken.rows().getLast().why())
                .contains("starts before the end of")
                .contains("; ");
    }

    private static BrokenVisits broken(QuayPlan plan, java.time.LocalDate day, String now) {
        var shown = plan.shown();
        var visits = shown.plan().orElseThrow().visits();
        return BrokenVisits.of(Speech.ENGLISH, shown, PlanBreaks.of(shown.folder(), visits, at(day, now)));
    }
}
