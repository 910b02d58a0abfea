package drylap.audit;

import static drylap.audit.TwoSites.at;
import static org.assertj.core.api.Assertions.assertThat;

import drylap.kernel.OpeningId;
import drylap.kernel.Task;
import drylap.planning.CoverNow;
import drylap.planning.Ledger;
import drylap.planning.LedgerTerm;
import java.util.List;
import org.junit.jupiter.api.Test;

class AuditTests {
    /**
     * Counted by hand from the plan of {@link TwoSites}.
     *
     * <pre>
     * late_handover  quay/N is due by the end of Tuesday; Q3 is clad on Wednesday at 10:20: 10 h 20 min, 11 started hours
     * crew_days      W1 Mon, W2 Mon, W2 Tue, T1 Tue, R1 Tue, S1 Wed
     * travel         W1 20+25, W2 20+20 and 20+20 (19.5 rounded up), T1 15+15, R1 30+35+10, S1 10+30+30
     * setup          W1 30+10+0+15, W2 30 and 30, R1 20+0+20+5, S1 30+0+10+15+30+0, T1 none
     * overtime       S1 is back at 14:42, the shift ends at 14:30
     * open_course    N/1 08:35 to 10:45: 3; N/2 1; E/1 12:30 to 13:47: 2; W/1 Monday 07:50 to Tuesday 08:50: 25
     * rain_risk      two hours each, so the chance is p + q - (pq + 0.6 sqrt(p(1-p)q(1-q))):
     *                Q3 .1 .2: 0.208, Q1 .2 .3: 0.330, Q2 .3 .2: 0.330, Q4 0, M1 .2 .2: 0.264, M2 .05 0: 0.050
     * changed        M1 was with W1, Q4 was on Tuesday; Q1's test is no longer needed and is not counted
     * medium         M3 of priority 2 lacks its install and its cladding: 2 x 3 x 1000; Q3 is closed before Tuesday's rain
     * </pre>
     */
    static final Ledger BY_HAND = new Ledger(
            List.of(
                    new Ledger.Line(LedgerTerm.LATE_HANDOVER, 11, 200, 2200),
                    new Ledger.Line(LedgerTerm.CREW_DAYS, 6, 400, 2400),
                    new Ledger.Line(LedgerTerm.TRAVEL, 300, 2, 600),
                    new Ledger.Line(LedgerTerm.SETUP, 245, 1, 245),
                    new Ledger.Line(LedgerTerm.OVERTIME, 12, 3, 36),
                    new Ledger.Line(LedgerTerm.OPEN_COURSE, 31, 5, 155),
                    new Ledger.Line(LedgerTerm.RAIN_RISK, 1182, 2, 2_364),
                    new Ledger.Line(LedgerTerm.CHANGED, 2, 50, 100)),
            0,
            6000,
            8_100);

    @Test
    void a_legal_plan_passes_with_its_ledger() {
        assertThat(Case.legal().ledger(BY_HAND).audit().breaches()).isEmpty();
    }

    @Test
    void the_ledger_counted_anew_is_the_one_counted_by_hand() {
        assertThat(Case.legal().audit().ledger()).isEqualTo(BY_HAND);
    }

    @Test
    void a_wall_that_the_rain_did_not_reach_opens_at_once() {
        assertThat(Case.legal().move("Q4", Task.INSTALL, "14 08:00").audit().breaches())
                .isEmpty();
    }

    @Test
    void an_install_may_end_just_as_much_before_rain_as_the_sealant_needs() {
        assertThat(Case.legal().move("M1", Task.INSTALL, "13 13:20").audit().breaches())
                .isEmpty();
    }

    @Test
    void the_way_home_may_take_all_of_the_overtime() {
        assertThat(Case.legal().move("M2", Task.CLAD, "15 15:40").audit().breaches())
                .isEmpty();
    }

    @Test
    void a_pinned_visit_may_start_before_the_plan() {
        assertThat(Case.legal().now("13 07:50").audit().breaches()).isEmpty();
        Case pinned = Case.legal()
                .published(TwoSites.folder().published().stream()
                        .map(was -> was.visit().opening().value().equals("Q1")
                                ? new drylap.planning.PublishedVisit(was.visit(), true)
                                : was)
                        .toList());
        assertThat(pinned.now("13 08:36").audit().breaches())
                .filteredOn(breach -> breach.rule() == ContractRule.START)
                .extracting(breach -> breach.where().words())
                .noneMatch(where -> where.contains("of Q1"));
    }

    @Test
    void an_open_opening_that_rain_reaches_first_is_to_be_covered() {
        // The mill's next rain is on Monday at 15:00; M1 stands open after its second step and is closed on Tuesday.
        Case open = Case.legal()
                .opening("M1", opening -> Design.like(opening).begun(4).opening())
                .edit("M1", Task.INSTALL, visit -> TwoSites.visit("W2", 2, "M1", Task.INSTALL, "14 08:50", 35));
        // Steps 2 to 7 are the block, 5 to 7 are left: half of 70 minutes.
        CoverNow cover = new CoverNow(new OpeningId("M1"), at("12 15:00"), at("13 15:00"), 35);
        assertThat(open.audit().coverNow()).containsExactly(cover);
        assertThat(open.audit().ledger().medium()).isEqualTo(11_000);
        assertThat(open.covering(cover).audit().breaches())
                .extracting(Breach::rule)
                .doesNotContain(ContractRule.COVER_NOW);
        assertThat(open.audit().breaches()).extracting(Breach::rule).contains(ContractRule.COVER_NOW);
    }

    @Test
    void rain_that_falls_as_the_plan_starts_is_the_next_rain() {
        Case raining = Case.legal()
                .weather("quay", "13 07:00", hour -> TwoForecasts.rain(hour.start(), 0.3, 0.4, 180))
                .now("13 07:20");
        assertThat(raining.audit().coverNow())
                .containsExactly(new CoverNow(new OpeningId("Q3"), at("12 15:00"), at("13 07:00"), 35));
    }

    @Test
    void a_breach_says_crew_task_opening_time_and_what_would_be_right() {
        assertThat(Case.legal().move("M1", Task.INSTALL, "13 07:49").audit().breaches())
                .singleElement()
                .hasToString(
                        "[2] crew W2, install of M1, Mon 13 Apr 2026 07:49: the crew is free at Mon 13 Apr 2026 07:00, "
                                + "travels 20 min and sets up for 30 min: ready at Mon 13 Apr 2026 07:50 "
                                + "(rule: set-up minutes lie in front of a task)");
    }
}
