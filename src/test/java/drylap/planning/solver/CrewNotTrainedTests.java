package drylap.planning.solver;

import static drylap.planning.solver.StopFixture.install;

import org.junit.jupiter.api.Test;

class CrewNotTrainedTests {
    final Verdict verdict = Verdict.of(factory -> new CrewConstraints().crewNotTrained(factory));

    @Test
    void a_crew_that_is_not_trained_counts_once_a_task() {
        verdict.amount(1, install("W1").unable().at(0), install("W2").at(60));
    }

    @Test
    void a_trained_crew_is_fine() {
        verdict.amount(0, install("W1").at(0));
    }
}
