package drylap.audit;

import static org.assertj.core.api.Assertions.assertThat;

import drylap.intake.GeneratedFolder;
import drylap.planning.JobFolder;
import drylap.planning.PlanRequest;
import drylap.planning.Planner;
import org.junit.jupiter.api.Test;

/** A job large enough to be planned region by region: put together again, its plan is legal and its ledger true. */
class RegionPlanTests {
    @Test
    void a_plan_made_region_by_region_is_legal_and_costs_what_it_says() {
        JobFolder folder = GeneratedFolder.of(900, 30, 3);
        var request = new PlanRequest(null, null, 2_000L, 1);

        var plan = Planner.standard().plan(folder, request, _ -> {}, () -> false);

        assertThat(Audit.of(folder, ClaimedPlan.of(plan), null).breaches()).isEmpty();
        assertThat(plan).isEqualTo(Planner.standard().plan(folder, request, _ -> {}, () -> false));
    }
}
