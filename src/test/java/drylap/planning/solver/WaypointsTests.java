package drylap.planning.solver;

import static org.assertj.core.api.Assertions.assertThat;

import drylap.intake.GeneratedFolder;
import drylap.planning.JobFolder;
import drylap.planning.Plan;
import drylap.planning.PlanRequest;
import drylap.planning.Planner;
import drylap.planning.Trail;
import drylap.planning.Waypoint;
import java.time.Instant;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** A search that another one goes on with loses nothing of what it had found. */
class WaypointsTests {
    static final PlanRequest NO_MOVES = moves(0);

    static PlanRequest moves(long most) {
        return new PlanRequest(null, null, most, 1, 1);
    }

    static Plan plan(JobFolder folder, PlanRequest request, Trail trail) {
        return Planner.standard().plan(folder, request, trail, _ -> {}, () -> false);
    }

    @Test
    void from_where_a_search_stood_the_same_plan_comes_without_a_move() {
        JobFolder folder = GeneratedFolder.of(60, 3, 1);
        Trail trail = Trail.fresh();
        Plan best = plan(folder, moves(4_000), trail);
        Waypoint stood = trail.now().orElseThrow();
        assertThat(stood.soft()).isEqualTo(best.ledger().soft());

        assertThat(plan(folder, NO_MOVES, Trail.from(stood))).isEqualTo(best);
        assertThat(plan(folder, NO_MOVES, Trail.fresh()).ledger().soft())
                .as("the first plan is dearer, or nothing was shown")
                .isGreaterThan(best.ledger().soft());
    }

    @Test
    void the_regions_of_a_large_job_go_on_each_from_where_it_stood() {
        JobFolder folder = GeneratedFolder.of(520, 18, 2);
        Trail trail = Trail.fresh();
        Plan best = plan(folder, moves(6_000), trail);
        Waypoint stood = trail.now().orElseThrow();
        assertThat(stood.days()).as("it is cut").isNotEmpty();

        Plan again = plan(folder, NO_MOVES, Trail.from(stood));

        assertThat(again.ledger()).isEqualTo(best.ledger());
        assertThat(again.visits()).isEqualTo(best.visits());
    }

    @Test
    void what_was_done_meanwhile_is_left_out_and_the_rest_goes_on() {
        JobFolder folder = GeneratedFolder.of(60, 3, 1);
        Trail trail = Trail.fresh();
        plan(folder, moves(4_000), trail);
        JobFolder later = folder.withOpenings(
                folder.openings().subList(3, folder.openings().size()));

        Plan again = plan(later, NO_MOVES, Trail.from(trail.now().orElseThrow()));

        assertThat(again.ledger().hard()).isZero();
        assertThat(again.ledger().soft())
                .isLessThan(plan(later, NO_MOVES, Trail.fresh()).ledger().soft());
    }

    @Test
    void a_place_that_is_of_another_job_is_passed_over() {
        JobFolder folder = GeneratedFolder.of(24, 2, 1);
        Waypoint strange = new Waypoint(
                0,
                0,
                List.of(),
                IntStream.range(0, 5)
                        .mapToObj(number -> new Waypoint.Turn(
                                0,
                                new drylap.kernel.CrewId("nobody" + number),
                                List.of(new drylap.kernel.OpeningId("nowhere" + number)),
                                drylap.kernel.Task.INSTALL,
                                Instant.parse("2026-04-13T19:00:00Z")))
                        .toList());
        assertThat(plan(folder, NO_MOVES, Trail.from(strange))).isEqualTo(plan(folder, NO_MOVES, Trail.fresh()));
    }
}
