package drylap.planning.solver;

import static drylap.planning.solver.StopFixture.install;

import org.junit.jupiter.api.Test;

class TaskUnplannedTests {
    final Verdict verdict = Verdict.of(factory -> new AbsenceConstraints().taskUnplanned(factory));

    @Test
    void a_task_left_out_counts_by_priority() {
        verdict.amount(
                4000, install("W1").unplanned(), install("W2").priority(2).unplanned());
    }

    @Test
    void a_planned_task_costs_nothing() {
        verdict.amount(0, install("W1").priority(5).at(0));
    }
}
