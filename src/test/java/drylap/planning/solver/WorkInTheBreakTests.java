package drylap.planning.solver;

import static drylap.planning.solver.StopFixture.HOUR;
import static drylap.planning.solver.StopFixture.install;

import org.junit.jupiter.api.Test;

class WorkInTheBreakTests {
    final Verdict verdict = Verdict.of(factory -> new CrewConstraints().workInTheBreak(factory));

    @Test
    void work_across_the_break_counts_once() {
        verdict.amount(1, install("W1").rest(5 * HOUR, 5 * HOUR + 30).at(4 * HOUR + 30));
    }

    @Test
    void work_that_ends_as_the_break_begins_is_fine() {
        verdict.amount(0, install("W1").rest(5 * HOUR, 5 * HOUR + 30).at(4 * HOUR));
    }

    @Test
    void work_that_begins_as_the_break_ends_is_fine() {
        verdict.amount(0, install("W1").rest(5 * HOUR, 5 * HOUR + 30).at(5 * HOUR + 30));
    }

    @Test
    void a_shift_without_a_break_is_fine() {
        verdict.amount(0, install("W1").at(5 * HOUR));
    }
}
