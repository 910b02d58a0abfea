package drylap.audit;

import static org.assertj.core.api.Assertions.assertThat;

import drylap.intake.GeneratedFolder;
import drylap.kernel.Rule;
import drylap.kernel.SiteId;
import drylap.planning.JobFolder;
import drylap.planning.LedgerTerm;
import drylap.planning.Plan;
import drylap.planning.PlanRequest;
import drylap.planning.Planner;
import org.junit.jupiter.api.Test;

/** Where rain lasts otherwise, planner and audit count the same other chance of rain. */
class LastingRainTests {
    private final JobFolder usual = GeneratedFolder.of(40, 2, 7);

    private final JobFolder otherwise = usual.withRules(
            usual.rules().with(null, Rule.RAIN_PERSISTENCE, 0.2).with(second(), Rule.RAIN_PERSISTENCE, 0.95));

    private SiteId second() {
        return usual.sites().getLast().id();
    }

    private static Plan plan(JobFolder folder) {
        return Planner.standard().plan(folder, new PlanRequest(null, null, 300L, 1), _ -> {}, () -> false);
    }

    @Test
    void planner_and_audit_agree_on_sites_where_rain_lasts_otherwise() {
        Plan plan = plan(otherwise);

        assertThat(Audit.of(otherwise, ClaimedPlan.of(plan), null).breaches()).isEmpty();
        assertThat(Audit.of(usual, ClaimedPlan.of(plan), null).breaches())
                .as("the same visits where rain lasts as usual")
                .extracting(Breach::toString)
                .anyMatch(words -> words.contains(LedgerTerm.RAIN_RISK.code()));
    }

    /** Same plan, the value of the default written out. */
    @Test
    void the_default_written_out_changes_nothing() {
        JobFolder written = usual.withRules(usual.rules().with(null, Rule.RAIN_PERSISTENCE, 0.6));

        assertThat(plan(written)).isEqualTo(plan(usual));
    }
}
