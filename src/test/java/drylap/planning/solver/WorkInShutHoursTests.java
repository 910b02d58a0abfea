package drylap.planning.solver;

import static drylap.planning.solver.StopFixture.install;

import org.junit.jupiter.api.Test;

class WorkInShutHoursTests {
    final Verdict verdict = Verdict.of(factory -> new CrewConstraints().workInShutHours(factory));

    @Test
    void work_in_a_shut_hour_counts() {
        verdict.amount(1, install("W1").shut().at(0));
    }

    @Test
    void work_in_open_hours_is_fine() {
        verdict.amount(0, install("W1").at(0));
    }
}
