package drylap.audit;

import static org.assertj.core.api.Assertions.assertThat;

import drylap.audit.PlanBreaks.Broken;
import drylap.kernel.Task;
import java.time.Instant;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** The legal plan of the two sites meets facts that it was not made for. */
class PlanBreaksTests {
    private static final String BEFORE_WORK = "13 07:00";
    private static final String NEXT_MORNING = "14 07:00";

    @Test
    void a_legal_plan_is_broken_by_nothing_before_work_begins() {
        assertThat(breaks(Case.legal(), BEFORE_WORK).none()).isTrue();
    }

    @Test
    void being_under_way_breaks_nothing() {
        assertThat(breaks(Case.legal(), "13 08:00").none()).isTrue();
    }

    @Test
    void new_rain_breaks_the_install_that_it_falls_on() {
        Case wet = Case.legal().weather("mill", "13 08:00", hour -> TwoForecasts.rain(hour.start(), 1, 0.8, 90));

        assertThat(breaks(wet, BEFORE_WORK).broken()).anySatisfy(broken -> {
            assertThat(broken.visit()).isEqualTo(wet.visit("M1", Task.INSTALL));
            assertThat(broken.breach().rule()).isEqualTo(ContractRule.RAINING);
        });
    }

    @Test
    void work_that_is_done_neither_slips_nor_breaks() {
        assertThat(breaks(afterMonday("Q1", "Q2", "Q3", "Q4", "M1"), NEXT_MORNING)
                        .none())
                .isTrue();
    }

    @Test
    void an_install_that_was_not_done_slips_and_breaks_what_waits_for_it() {
        Case late = afterMonday("Q1", "Q3", "Q4", "M1");

        PlanBreaks breaks = breaks(late, NEXT_MORNING);

        assertThat(breaks.slipped()).containsExactly(late.visit("Q2", Task.INSTALL));
        assertThat(rules(breaks, late, "Q2", Task.TEST)).containsExactly(ContractRule.CURE);
        assertThat(rules(breaks, late, "Q1", Task.WRAP)).containsExactly(ContractRule.WRAP_COURSE);
        assertThat(breaks.broken())
                .allSatisfy(broken -> assertThat(broken.visit()).isNotNull());
    }

    @Test
    void an_install_that_was_taken_up_early_needs_less_and_breaks_nothing() {
        Case begun = Case.legal().opening("Q1", opening -> opening.standing(2, TwoSites.at(BEFORE_WORK), Set.of()));

        assertThat(rules(breaks(begun, BEFORE_WORK), begun, "Q1", Task.INSTALL)).isEmpty();
    }

    @Test
    void an_install_of_which_lines_were_returned_needs_more_minutes_than_its_visit() {
        Case returned = Case.legal().opening("Q3", opening -> opening.standing(0, null, Set.of()));

        assertThat(rules(breaks(returned, BEFORE_WORK), returned, "Q3", Task.INSTALL))
                .containsExactly(ContractRule.MINUTES);
    }

    private static List<ContractRule> rules(PlanBreaks breaks, Case of, String opening, Task task) {
        return breaks.broken().stream()
                .filter(broken -> of.visit(opening, task).equals(broken.visit()))
                .map(Broken::breach)
                .map(Breach::rule)
                .toList();
    }

    private static PlanBreaks breaks(Case of, String now) {
        return PlanBreaks.of(of.folder(), of.visits(), TwoSites.at(now));
    }

    private static Case afterMonday(String... done) {
        Case now = Case.legal();
        for (String id : done) {
            Instant end = now.visit(id, Task.INSTALL).end();
            now = now.opening(id, opening -> opening.standing(opening.stepList().last(), end, Set.of()));
        }
        return now;
    }
}
