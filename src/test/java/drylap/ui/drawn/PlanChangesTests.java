package drylap.ui.drawn;

import static drylap.ui.drawn.QuayPlan.MONDAY;
import static drylap.ui.drawn.QuayPlan.TUESDAY;
import static org.assertj.core.api.Assertions.assertThat;

import drylap.kernel.Task;
import drylap.planning.Ledger;
import drylap.planning.LedgerTerm;
import drylap.planning.Plan;
import drylap.planning.UnplannedReason;
import drylap.speech.Speech;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Two plans of the quay folder, both written by hand; the install of QW1-02 is done there. */
class PlanChangesTests {
    @Test
    void says_of_each_change_what_it_was_what_it_is_to_be_and_why() {
        var published = new QuayPlan()
                .visit("W1", TUESDAY, "09:00", "10:00", Task.INSTALL, "QW2-01")
                .visit("W1", MONDAY, "09:00", "10:00", Task.INSTALL, "MS1-01")
                .visit("W1", MONDAY, "10:00", "11:00", Task.INSTALL, "QW1-02")
                .without("MS1-01", Task.WRAP, UnplannedReason.HORIZON_FULL, "every day is full");
        var proposal = new QuayPlan()
                .visit("W1", TUESDAY, "11:00", "12:00", Task.INSTALL, "MS1-01")
                .visit("P1", TUESDAY, "13:00", "14:00", Task.WRAP, "MS1-01")
                .without("QW2-01", Task.INSTALL, UnplannedReason.HORIZON_FULL, "every day is full");

        var changes = changes(published, proposal);

        assertThat(changes.summary()).isEqualTo("1 moved, 1 added, 1 dropped, 0 as they were, 1 done by now");
        assertThat(changes.rows()).extracting(PlanChanges.Row::kind).containsExactly("moved", "dropped", "added");
        assertThat(changes.rows().get(0))
                .extracting(PlanChanges.Row::was, PlanChanges.Row::is)
                .containsExactly("Mon 13 Apr 09:00, W1", "Tue 14 Apr 11:00, W1");
        assertThat(changes.rows().get(1).is()).isEqualTo("not planned");
        assertThat(changes.rows().get(1).why()).contains("it could not be placed: every day is full");
        assertThat(changes.rows().get(2).why()).isEqualTo("it had been left out, and has a place now");
    }

    @Test
    void a_start_that_has_passed_is_the_why_of_a_later_one() {
        var published = new QuayPlan().visit("W1", MONDAY, "06:00", "06:50", Task.INSTALL, "MS1-01");
        var proposal = new QuayPlan().visit("W1", MONDAY, "09:00", "10:00", Task.INSTALL, "MS1-01");

        assertThat(changes(published, proposal).rows().getFirst().why()).contains("its start has passed");
    }

    @Test
    void rain_at_the_old_time_is_named_with_its_wall_and_hour() {
        var published = new QuayPlan().visit("W1", MONDAY, "12:30", "13:00", Task.INSTALL, "QW2-01");
        var proposal = new QuayPlan().visit("W1", MONDAY, "09:00", "09:30", Task.INSTALL, "QW2-01");

        assertThat(changes(published, proposal).rows().getFirst().why()).isEqualTo("rain on the west wall from 12:00");
    }

    @Test
    void a_crew_that_does_not_come_is_named_with_its_day() {
        var published = new QuayPlan().visit("C1", MONDAY, "09:00", "09:30", Task.CLAD, "MS1-01");
        var proposal = new QuayPlan().visit("C1", TUESDAY, "09:00", "09:30", Task.CLAD, "MS1-01");

        assertThat(changes(published, proposal).rows().getFirst().why())
                .endsWith("crew C1 does not come on Mon 13 Apr");
    }

    @Test
    void puts_both_ledgers_side_by_side_even_where_one_lacks_a_term() {
        var before = plan(new QuayPlan(), new Ledger(List.of(new Ledger.Line(LedgerTerm.TRAVEL, 30, 2, 60)), 0, 0, 60));
        var after = plan(
                new QuayPlan(),
                new Ledger(
                        List.of(
                                new Ledger.Line(LedgerTerm.CREW_DAYS, 1, 400, 400),
                                new Ledger.Line(LedgerTerm.TRAVEL, 10, 2, 20)),
                        0,
                        0,
                        420));

        assertThat(PlanChanges.of(Speech.ENGLISH, new QuayPlan().shown(), before, after)
                        .costs())
                .contains(new PlanChanges.Cost("Crew-days", 0, 400, 400), new PlanChanges.Cost("Travel", 60, 20, -40))
                .last()
                .isEqualTo(new PlanChanges.Cost("Sum", 60, 420, 360));
    }

    @Test
    void more_and_less_are_told_apart_by_their_sign() {
        assertThat(List.of(
                        Words.difference(Speech.ENGLISH, 1200),
                        Words.difference(Speech.ENGLISH, -7),
                        Words.difference(Speech.ENGLISH, 0)))
                .containsExactly("+1\u2009200", "\u22127", "as before");
    }

    private static PlanChanges changes(QuayPlan published, QuayPlan proposal) {
        return PlanChanges.of(
                Speech.ENGLISH,
                proposal.shown(),
                published.shown().plan().orElseThrow(),
                proposal.shown().plan().orElseThrow());
    }

    private static Plan plan(QuayPlan visits, Ledger ledger) {
        Plan plan = visits.shown().plan().orElseThrow();
        return new Plan(
                plan.start(),
                plan.horizonEnd(),
                plan.visits(),
                plan.unplanned(),
                plan.coverNow(),
                plan.openHours(),
                ledger);
    }
}
