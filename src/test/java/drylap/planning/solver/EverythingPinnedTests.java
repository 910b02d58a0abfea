package drylap.planning.solver;

import static org.assertj.core.api.Assertions.assertThat;

import drylap.intake.GeneratedFolder;
import drylap.planning.JobFolder;
import drylap.planning.Plan;
import drylap.planning.PlanRequest;
import drylap.planning.Planner;
import drylap.planning.PublishedVisit;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class EverythingPinnedTests {
    private final JobFolder folder = GeneratedFolder.of(12, 1, 1);

    private static Plan plan(JobFolder folder, long moves) {
        return Planner.standard().plan(folder, new PlanRequest(null, null, moves, 1), _ -> {}, () -> false);
    }

    @ParameterizedTest
    @ValueSource(longs = {0, 200})
    void a_plan_of_which_every_visit_is_pinned_stays_as_it_is(long moves) {
        Plan first = plan(folder, 300);
        assertThat(first.unplanned()).isEmpty();
        JobFolder held = folder.withPublished(first.visits().stream()
                .map(one -> new PublishedVisit(one, true))
                .toList());

        Plan again = plan(held, moves);

        assertThat(again.visits()).isEqualTo(first.visits());
        assertThat(again.ledger().hard()).isZero();
    }

    @Test
    void a_job_without_an_opening_left_has_an_empty_plan() {
        Plan none = plan(folder.withOpenings(List.of()), 200);

        assertThat(none.visits()).isEmpty();
        assertThat(none.ledger().hard()).isZero();
    }
}
