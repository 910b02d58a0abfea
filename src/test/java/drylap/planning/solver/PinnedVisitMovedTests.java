package drylap.planning.solver;

import static drylap.planning.solver.StopFixture.MONDAY;
import static drylap.planning.solver.StopFixture.install;

import org.junit.jupiter.api.Test;

class PinnedVisitMovedTests {
    final Verdict verdict = Verdict.of(factory -> new CrewConstraints().pinnedVisitMoved(factory));

    @Test
    void a_pinned_visit_at_another_time_counts() {
        verdict.amount(1, install("W1").pinned(0, 60).at(61));
    }

    @Test
    void a_pinned_visit_with_another_crew_counts() {
        verdict.amount(1, install("W1").pinned(1, 60).by(0).at(60));
    }

    @Test
    void a_pinned_visit_that_is_left_out_counts() {
        verdict.amount(1, install("W1").pinned(0, 60).unplanned());
    }

    @Test
    void a_pinned_visit_in_its_place_is_fine() {
        verdict.amount(0, install("W1").pinned(0, 60).at(60));
    }

    @Test
    void a_visit_that_is_not_pinned_may_move() {
        verdict.amount(0, install("W1").published(0, MONDAY).at(120));
    }
}
