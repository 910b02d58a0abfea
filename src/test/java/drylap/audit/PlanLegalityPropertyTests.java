package drylap.audit;

import static org.assertj.core.api.Assertions.assertThat;

import drylap.intake.GeneratedFolder;
import drylap.planning.JobFolder;
import drylap.planning.Plan;
import drylap.planning.PlanRequest;
import drylap.planning.Planner;
import java.time.Instant;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.constraints.IntRange;
import org.jspecify.annotations.Nullable;

/** Whatever the job, the planner's plan keeps every rule and its ledger is right, as an audit of its own reckoning finds. */
class PlanLegalityPropertyTests {
    private static final int TRIES = 70;

    private static Plan plan(JobFolder folder, long moves, @Nullable Instant now) {
        return Planner.standard().plan(folder, new PlanRequest(now, null, moves, 1), _ -> {}, () -> false);
    }

    private static void assertLegal(JobFolder folder, Plan plan, @Nullable Instant now) {
        assertThat(Audit.of(folder, ClaimedPlan.of(plan), now).breaches()).isEmpty();
    }

    private static JobFolder folder(int openings, int seed) {
        return GeneratedFolder.of(openings, 1 + seed % Math.min(3, openings / 4), seed);
    }

    @Property(tries = TRIES, shrinking = ShrinkingMode.OFF)
    void a_plan_is_legal(@ForAll @IntRange(min = 8, max = 60) int openings, @ForAll @IntRange(max = 9999) int seed) {
        JobFolder folder = folder(openings, seed);
        assertLegal(folder, plan(folder, seed % 200, null), null);
    }

    @Property(tries = TRIES, shrinking = ShrinkingMode.OFF)
    void a_plan_of_an_awkward_job_is_legal(
            @ForAll @IntRange(min = 8, max = 60) int openings, @ForAll @IntRange(max = 9999) int seed) {
        JobFolder folder = new Twist(new Random(seed)).awkward(folder(openings, seed));
        assertLegal(folder, plan(folder, seed % 200, null), null);
    }

    @Property(tries = TRIES, shrinking = ShrinkingMode.OFF)
    void a_plan_made_again_halfway_is_legal(
            @ForAll @IntRange(min = 8, max = 60) int openings, @ForAll @IntRange(max = 9999) int seed) {
        Twist twist = new Twist(new Random(seed));
        JobFolder folder = twist.awkward(folder(openings, seed));
        Plan first = plan(folder, 50, null);
        Instant now = twist.momentOf(first);
        JobFolder again = folder.withPublished(twist.published(first, now));
        assertLegal(again, plan(again, seed % 200, now), now);
    }
}
