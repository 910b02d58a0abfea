package drylap.planning.solver;

import static drylap.planning.solver.StopFixture.HOUR;
import static drylap.planning.solver.StopFixture.install;

import org.junit.jupiter.api.Test;

class BackAfterTheLimitTests {
    final Verdict verdict = Verdict.of(factory -> new CrewConstraints().backAfterTheLimit(factory));

    @Test
    void the_way_back_counts_past_the_limit() {
        verdict.amount(10, install("W1").last(40).at(9 * HOUR - 30));
    }

    @Test
    void being_back_at_the_limit_is_fine() {
        verdict.amount(0, install("W1").last(30).at(9 * HOUR - 30));
    }

    @Test
    void work_that_itself_ends_past_the_limit_counts() {
        verdict.amount(1, install("W1").at(9 * HOUR + 1));
    }
}
