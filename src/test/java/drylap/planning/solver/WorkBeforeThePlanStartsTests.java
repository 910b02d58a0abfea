package drylap.planning.solver;

import static drylap.planning.solver.StopFixture.install;

import org.junit.jupiter.api.Test;

class WorkBeforeThePlanStartsTests {
    final Verdict verdict = Verdict.of(factory -> new CrewConstraints().workBeforeThePlanStarts(factory));

    @Test
    void work_before_minute_nought_counts() {
        verdict.amount(1, install("W1").free(-60).at(-1));
    }

    @Test
    void work_from_minute_nought_is_fine() {
        verdict.amount(0, install("W1").at(0));
    }

    @Test
    void a_pinned_visit_may_have_begun_before() {
        verdict.amount(0, install("W1").pinned(0, -30).at(-30));
    }
}
