package drylap.audit;

import static org.assertj.core.api.Assertions.assertThat;

import drylap.kernel.CrewId;
import drylap.kernel.OpeningId;
import drylap.kernel.Reach;
import drylap.kernel.SiteId;
import drylap.kernel.Task;
import drylap.planning.Ledger;
import drylap.planning.Plan;
import drylap.planning.UnplannedReason;
import drylap.planning.UnplannedTask;
import java.time.Instant;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** One visit of the two sites' legal plan is tried at another place. */
class MoveJudgeTests {
    private static final String BEFORE_WORK = "13 06:00";

    @Test
    void an_hour_later_on_a_free_afternoon_breaks_nothing() {
        MoveVerdict verdict = verdict(Case.legal(), "Q4", Task.INSTALL, "W1", "13 13:00");

        assertThat(verdict.broken()).isEmpty();
        assertThat(verdict.keepsEveryRule()).isTrue();
        assertThat(verdict.is().end()).isEqualTo(TwoSites.at("13 14:17"));
    }

    @Test
    void rain_on_the_wall_is_named_with_opening_crew_and_hour() {
        MoveVerdict verdict = verdict(Case.legal(), "M1", Task.INSTALL, "W2", "13 14:20");

        assertThat(verdict.broken()).singleElement().satisfies(broken -> {
            assertThat(broken.breach().rule()).isEqualTo(ContractRule.RAINING);
            assertThat(broken.breach().where().words()).contains("crew W2", "install of M1", "Mon 13 Apr", "14:20");
            assertThat(broken.breach().what().words()).contains("30 of its minutes", "15:00");
        });
    }

    @Test
    void sealant_that_cannot_skin_before_the_rain_is_named() {
        assertThat(rules(Case.legal(), "M1", Task.INSTALL, "W2", "13 13:30")).containsExactly(ContractRule.SKIN);
    }

    @Test
    void what_waits_for_the_visit_is_broken_by_moving_it_behind() {
        MoveVerdict verdict = verdict(Case.legal(), "M1", Task.INSTALL, "W2", "14 12:30");

        assertThat(verdict.broken()).allSatisfy(broken -> {
            assertThat(broken.breach().rule()).isEqualTo(ContractRule.WRAP_COURSE);
            assertThat(broken.breach().what().words()).contains("install of M1");
        });
        assertThat(verdict.broken())
                .extracting(broken -> broken.breach().where().words())
                .anySatisfy(where -> assertThat(where).contains("crew R1", "wrap of M1", "Tue 14 Apr", "09:00"))
                .anySatisfy(where -> assertThat(where).contains("crew R1", "wrap of M2", "Tue 14 Apr", "09:25"));
    }

    @Test
    void a_crew_that_does_not_come_that_day_is_named() {
        assertThat(rules(Case.legal(), "Q2", Task.TEST, "T1", "13 13:00"))
                .containsExactlyInAnyOrder(ContractRule.SHIFT, ContractRule.CURE);
    }

    @Test
    void the_dark_is_named() {
        assertThat(rules(Case.legal(), "Q2", Task.TEST, "T1", "15 05:20")).contains(ContractRule.DARK);
    }

    @Test
    void two_visits_at_once_are_named() {
        assertThat(rules(Case.legal(), "Q2", Task.INSTALL, "W1", "13 09:00"))
                .containsExactly(ContractRule.ONE_AT_A_TIME);
    }

    @Test
    void too_short_a_way_is_named() {
        assertThat(rules(Case.legal(), "M1", Task.INSTALL, "W1", "13 10:50")).contains(ContractRule.TRAVEL);
    }

    @Test
    void a_crew_of_another_trade_is_named() {
        assertThat(rules(Case.legal(), "Q4", Task.INSTALL, "R1", "13 13:00")).containsExactly(ContractRule.TRADE);
    }

    @Test
    void what_the_day_broke_before_is_not_laid_to_the_move() {
        Case wet = Case.legal().weather("mill", "13 08:00", hour -> TwoForecasts.rain(hour.start(), 1, 0.8, 90));

        assertThat(rules(wet, "Q4", Task.INSTALL, "W1", "13 13:00")).isEmpty();
    }

    @Test
    void a_visit_that_stood_in_the_rain_answers_for_the_next_rain_too() {
        Case wet = Case.legal().weather("mill", "13 08:00", hour -> TwoForecasts.rain(hour.start(), 1, 0.8, 90));

        assertThat(rules(wet, "M1", Task.INSTALL, "W2", "13 14:20")).contains(ContractRule.RAINING);
    }

    @Test
    void a_move_into_the_dry_mends_the_plan() {
        Case wet = Case.legal().move("M1", Task.INSTALL, "13 14:20");

        MoveVerdict verdict = verdict(wet, "M1", Task.INSTALL, "W2", "13 07:50");

        assertThat(verdict.broken()).isEmpty();
        assertThat(verdict.mended())
                .extracting(broken -> broken.breach().rule())
                .containsExactly(ContractRule.RAINING);
    }

    @Test
    void the_visits_own_pin_does_not_hold_it() {
        assertThat(rules(Case.legal(), "M1", Task.WRAP, "R1", "15 08:00")).doesNotContain(ContractRule.PINNED);
    }

    @Test
    void nothing_is_moved_into_the_past() {
        assertThat(judge(Case.legal(), "Q4", Task.INSTALL, "13 12:00")
                        .judge(new CrewId("W1"), TwoSites.at("13 11:00"))
                        .broken())
                .extracting(broken -> broken.breach().rule())
                .contains(ContractRule.START);
        assertThat(judge(Case.legal(), "Q4", Task.INSTALL, "13 12:00")
                        .judge(new CrewId("W1"), TwoSites.at("13 13:00"))
                        .broken())
                .isEmpty();
    }

    @Test
    void a_task_that_is_done_is_not_moved() {
        Case done = Case.legal()
                .opening("Q4", one -> one.standing(one.stepList().last(), TwoSites.at("13 07:00"), Set.of()));

        assertThat(MoveJudge.of(done.folder(), plan(done), new OpeningId("Q4"), Task.INSTALL, TwoSites.at(BEFORE_WORK)))
                .isEmpty();
    }

    @Test
    void someone_of_one_site_hears_of_another_site_no_more_than_the_rule() {
        Reach mill = Reach.of(Set.of(new SiteId("mill")));
        MoveVerdict verdict = verdict(Case.legal(), "M1", Task.INSTALL, "W1", "13 10:00");

        assertThat(verdict.broken().toString()).contains("Q2");
        assertThat(verdict.within(mill, Case.legal().visits()).broken())
                .hasSameSizeAs(verdict.broken())
                .extracting(broken ->
                        broken.breach().where().words() + broken.breach().what().words())
                .allSatisfy(words -> assertThat(words).doesNotContain("Q1", "Q2", "Q3", "Q4"))
                .anySatisfy(words -> assertThat(words).contains("not yours"));
    }

    @Test
    void the_plan_with_the_visit_moved_is_sorted_numbered_and_counted_as_the_audit_counts() {
        Case legal = Case.legal();
        Plan moved = judge(legal, "Q4", Task.INSTALL, BEFORE_WORK)
                .plan(legal.folder(), new CrewId("W1"), TwoSites.at("13 13:00"));

        AuditReport report = Audit.of(
                legal.folder(),
                new ClaimedPlan(
                        moved.visits(),
                        ClaimedPlan.unplanned(moved.unplanned()),
                        moved.coverNow(),
                        null,
                        moved.ledger()),
                moved.start());
        assertThat(report.breaches()).isEmpty();
        assertThat(moved.visits()).hasSameSizeAs(legal.visits());
    }

    private static List<ContractRule> rules(Case of, String opening, Task task, String crew, String start) {
        return verdict(of, opening, task, crew, start).broken().stream()
                .map(broken -> broken.breach().rule())
                .toList();
    }

    private static MoveVerdict verdict(Case of, String opening, Task task, String crew, String start) {
        return judge(of, opening, task, BEFORE_WORK).judge(new CrewId(crew), TwoSites.at(start));
    }

    private static MoveJudge judge(Case of, String opening, Task task, String clock) {
        return MoveJudge.of(of.folder(), plan(of), new OpeningId(opening), task, TwoSites.at(clock))
                .orElseThrow();
    }

    private static Plan plan(Case of) {
        Instant start = TwoSites.at("13 07:00");
        return new Plan(
                start,
                TwoSites.at("15 17:00"),
                of.visits(),
                List.of(
                        new UnplannedTask(new OpeningId("M3"), Task.INSTALL, UnplannedReason.NO_DELIVERY, ""),
                        new UnplannedTask(new OpeningId("M3"), Task.CLAD, UnplannedReason.WAITS_FOR_TASK, "")),
                List.of(),
                List.of(),
                new Ledger(List.of(), 0, 0, 0));
    }
}
