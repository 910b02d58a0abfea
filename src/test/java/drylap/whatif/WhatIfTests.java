package drylap.whatif;

import static org.assertj.core.api.Assertions.assertThat;

import drylap.audit.Audit;
import drylap.audit.ClaimedPlan;
import drylap.intake.GeneratedFolder;
import drylap.kernel.Task;
import drylap.kernel.TimeWindow;
import drylap.planning.JobFolder;
import drylap.planning.LedgerTerm;
import drylap.planning.Plan;
import drylap.planning.PlanRequest;
import drylap.planning.Planner;
import drylap.planning.Visit;
import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.api.Test;

class WhatIfTests {
    private static final PlanRequest BUDGET = new PlanRequest(null, null, 300L, 1);
    private final JobFolder folder = GeneratedFolder.of(16, 1, 2);

    private List<Outcome> compare(Change... changes) {
        return WhatIf.compare(folder, List.of(new Scenario("other", List.of(changes))), BUDGET, () -> false);
    }

    private static void assertLegal(Outcome outcome) {
        assertThat(Audit.of(outcome.folder(), ClaimedPlan.of(outcome.plan()), null)
                        .breaches())
                .isEmpty();
    }

    @Test
    void a_scenario_with_nothing_changed_has_the_same_plan() {
        List<Outcome> outcomes = compare();
        Plan alone = Planner.standard().plan(folder, BUDGET, _ -> {}, () -> false);
        assertThat(outcomes).extracting(Outcome::name).containsExactly("as it is", "other");
        assertThat(outcomes).allSatisfy(one -> assertThat(one.plan()).isEqualTo(alone));
    }

    @Test
    void the_visits_of_a_dropped_day_go_elsewhere() {
        Visit asked = compare().getFirst().plan().visits().getFirst();
        Outcome other = compare(new DropDay(asked.date(), asked.crew(), null)).getLast();
        assertThat(other.plan().visits())
                .noneMatch(one -> one.crew().equals(asked.crew()) && one.date().equals(asked.date()));
        assertLegal(other);
    }

    @Test
    void rain_that_is_added_shuts_the_hours_it_falls_in() {
        // a plan that is not searched does not wait until the forecast is over
        Plan before = Planner.standard().plan(folder, new PlanRequest(null, null, 0L, 1), _ -> {}, () -> false);
        Visit install = before.visits().stream()
                .filter(visit -> visit.task() == Task.INSTALL)
                .min(Comparator.comparing(Visit::start))
                .orElseThrow();
        TimeWindow rain = new TimeWindow(install.start(), install.end());
        Outcome wet = compare(new OtherRain(folder.sites().getFirst().id(), rain, true))
                .getLast();
        assertThat(wet.plan().visits())
                .filteredOn(visit -> visit.task() == Task.INSTALL)
                .noneMatch(visit -> new TimeWindow(visit.start(), visit.end()).overlaps(rain));
        assertLegal(wet);
        assertThat(Audit.of(wet.folder(), ClaimedPlan.of(before), null).breaches())
                .isNotEmpty();
    }

    @Test
    void days_and_hand_overs_are_counted_from_the_plan() {
        Outcome outcome = compare().getFirst();
        assertThat(outcome.crewDays())
                .isEqualTo(outcome.plan().ledger().lines().stream()
                        .filter(line -> line.term() == LedgerTerm.CREW_DAYS)
                        .findFirst()
                        .orElseThrow()
                        .amount());
        assertThat(outcome.handovers()).hasSameSizeAs(folder.facades()).allSatisfy(wall -> {
            assertThat(wall.notPlanned()).isZero();
            assertThat(outcome.plan().visits())
                    .anyMatch(visit -> visit.task() == Task.CLAD
                            && visit.facade().equals(wall.facade())
                            && visit.end().equals(wall.cladBy()));
        });
    }

    @Test
    void cladding_that_is_left_out_leaves_no_hand_over() {
        Plan none = new Plan(
                java.time.Instant.EPOCH,
                java.time.Instant.EPOCH,
                List.of(),
                folder.openings().stream()
                        .map(one -> new drylap.planning.UnplannedTask(
                                one.id(), Task.CLAD, drylap.planning.UnplannedReason.HORIZON_FULL, ""))
                        .toList(),
                List.of(),
                List.of(),
                new drylap.planning.Ledger(List.of(), 0, 0, 0));
        assertThat(new Outcome("none", folder, none).handovers()).allSatisfy(wall -> {
            assertThat(wall.cladBy()).isNull();
            assertThat(wall.notPlanned()).isPositive();
        });
    }
}
