package drylap.planning.solver;

import static drylap.planning.solver.StopFixture.install;

import org.junit.jupiter.api.Test;

class NoTimeForRoadAndSetUpTests {
    final Verdict verdict = Verdict.of(factory -> new CrewConstraints().noTimeForRoadAndSetUp(factory));

    @Test
    void starting_before_road_and_set_up_are_over_counts_the_missing_minutes() {
        verdict.amount(5, install("W1").free(0).road(20).setup(15).at(30));
    }

    @Test
    void starting_as_set_up_ends_is_fine() {
        verdict.amount(0, install("W1").free(0).road(20).setup(15).at(35));
    }

    @Test
    void waiting_longer_is_fine() {
        verdict.amount(0, install("W1").free(0).road(20).setup(15).at(90));
    }
}
