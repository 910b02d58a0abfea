package drylap.audit;

import static org.assertj.core.api.Assertions.assertThat;

import drylap.crews.Crew;
import drylap.crews.Shift;
import drylap.intake.GeneratedFolder;
import drylap.kernel.CrewId;
import drylap.kernel.OpeningId;
import drylap.kernel.Trade;
import drylap.planning.CostDifference;
import drylap.planning.Explainer;
import drylap.planning.JobFolder;
import drylap.planning.Ledger;
import drylap.planning.LedgerTerm;
import drylap.planning.MoveCost;
import drylap.planning.Plan;
import drylap.planning.PlanRequest;
import drylap.planning.Planner;
import drylap.planning.PublishedVisit;
import drylap.planning.Remedy;
import drylap.planning.UnplannedTask;
import drylap.planning.Visit;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What the explainer claims, reckoned again by the audit. */
class ExplainedPlansTests {
    private static Plan plan(JobFolder folder) {
        return Planner.standard().plan(folder, new PlanRequest(null, null, 500L, 1), _ -> {}, () -> false);
    }

    private static long audited(JobFolder folder, Plan plan) {
        AuditReport report = Audit.of(folder, ClaimedPlan.of(plan), null);
        assertThat(report.breaches()).isEmpty();
        return soft(report.ledger());
    }

    private static long soft(Ledger ledger) {
        return ledger.lines().stream()
                .filter(line -> line.term() != LedgerTerm.CHANGED)
                .mapToLong(Ledger.Line::cost)
                .sum();
    }

    private static JobFolder having(JobFolder folder, Plan plan, Visit held) {
        List<PublishedVisit> had = new ArrayList<>();
        for (Visit one : plan.visits())
            if (!(one.opening().equals(held.opening()) && one.task() == held.task()))
                had.add(new PublishedVisit(one, false));
        had.add(new PublishedVisit(held, true));
        return folder.withPublished(had);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void the_cost_of_a_move_is_the_difference_of_two_audited_plans(long seed) {
        JobFolder folder = GeneratedFolder.of(12, 1, seed);
        Plan plan = plan(folder);
        Visit asked = plan.visits().get((int) seed * 3);
        long before = audited(folder, plan);
        int possible = 0;
        for (MoveCost cost : Explainer.standard().moves(folder, plan, asked.opening(), asked.task(), null)) {
            if (!(cost instanceof MoveCost.Possible(var _, Visit to, Plan moved, CostDifference more))) continue;
            possible++;
            assertThat(more.soft()).isEqualTo(audited(having(folder, plan, to), moved) - before);
            assertThat(more.medium())
                    .isEqualTo(moved.ledger().medium() - plan.ledger().medium());
            assertThat(moved.visits()).contains(to);
            assertThat(to).isNotEqualTo(asked);
        }
        assertThat(possible).isPositive();
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void work_that_is_done_since_the_plan_was_made_counts_on_neither_side(long seed) {
        JobFolder whole = GeneratedFolder.of(12, 1, seed);
        Plan plan = plan(whole);
        OpeningId done = plan.visits().getFirst().opening();
        JobFolder left = whole.withOpenings(
                whole.openings().stream().filter(one -> !one.id().equals(done)).toList());
        List<Visit> rest = plan.visits().stream()
                .filter(one -> !one.opening().equals(done))
                .toList();
        JobFolder standing = left.withPublished(
                rest.stream().map(one -> new PublishedVisit(one, true)).toList());
        Plan stands =
                Planner.standard().plan(standing, new PlanRequest(plan.start(), null, 0L, 1), _ -> {}, () -> false);
        assertThat(stands.visits()).hasSameSizeAs(rest);
        long before = audited(standing, stands);
        Visit asked = rest.get((int) seed * 3);
        int possible = 0;
        for (MoveCost cost : Explainer.standard().moves(left, plan, asked.opening(), asked.task(), null)) {
            if (!(cost instanceof MoveCost.Possible(var _, Visit to, Plan moved, CostDifference more))) continue;
            possible++;
            assertThat(more.soft()).isEqualTo(audited(having(left, stands, to), moved) - before);
        }
        assertThat(possible).isPositive();
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void a_change_that_is_said_to_plan_a_task_plans_it_when_it_is_made(long seed) {
        JobFolder folder = withTooFewSidingDays(GeneratedFolder.of(12, 1, seed));
        Plan plan = plan(folder);
        assertThat(plan.unplanned()).isNotEmpty();
        UnplannedTask left = plan.unplanned().getFirst();
        Optional<Remedy> remedy = Explainer.standard().remedy(folder, plan, left.opening(), left.task(), null);
        Remedy.Found found = Objects.requireNonNull(remedy.orElseThrow().found());
        JobFolder changed = found.change()
                .applyTo(folder)
                .withPublished(plan.visits().stream()
                        .map(one -> new PublishedVisit(one, false))
                        .toList());
        Plan again = Planner.standard().plan(changed, new PlanRequest(null, null, 2000L, 1), _ -> {}, () -> false);
        assertThat(again.visits()).anyMatch(one -> one.opening().equals(left.opening()) && one.task() == left.task());
        assertThat(again.unplanned().size()).isLessThan(plan.unplanned().size());
        assertThat(found.more().soft()).isEqualTo(audited(changed, again) - audited(folder, plan));
    }

    /** Takes the siding crews' last days away, one after the other, until something stays out. */
    private static JobFolder withTooFewSidingDays(JobFolder folder) {
        Set<CrewId> siding = folder.crews().stream()
                .filter(crew -> crew.trade() == Trade.SIDING)
                .map(Crew::id)
                .collect(Collectors.toSet());
        LocalDate last = folder.shifts().stream()
                .map(Shift::date)
                .max(Comparator.naturalOrder())
                .orElseThrow();
        JobFolder fewer = folder;
        for (int less = 0; less < 30 && plan(fewer).unplanned().isEmpty(); less++) {
            LocalDate until = last.minusDays(less);
            fewer = folder.withShifts(folder.shifts().stream()
                    .filter(shift ->
                            !siding.contains(shift.crew()) || shift.date().isBefore(until))
                    .toList());
        }
        return fewer;
    }
}
