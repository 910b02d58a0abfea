package drylap.planning.solver;

import static drylap.planning.solver.StopFixture.install;

import org.junit.jupiter.api.Test;

class TwoTasksAtOnceTests {
    final Verdict verdict = Verdict.of(factory -> new CrewConstraints().twoTasksAtOnce(factory));

    @Test
    void tasks_that_overlap_count_their_common_minutes() {
        verdict.amount(15, install("W1").at(0), install("W2").at(45));
    }

    @Test
    void a_task_that_starts_as_another_ends_is_fine() {
        verdict.amount(0, install("W1").at(0), install("W2").at(60));
    }

    @Test
    void two_crews_may_work_at_the_same_time() {
        verdict.amount(0, install("W1").by(0).at(0), install("W2").by(1).at(0));
    }

    @Test
    void tasks_that_start_together_count_once() {
        verdict.amount(60, install("W1").at(0), install("W2").at(0));
    }
}
