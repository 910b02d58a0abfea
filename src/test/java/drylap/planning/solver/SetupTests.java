package drylap.planning.solver;

import static drylap.planning.solver.StopFixture.install;

import org.junit.jupiter.api.Test;

class SetupTests {
    final Verdict verdict = Verdict.of(factory -> new CostConstraints().setup(factory));

    @Test
    void set_up_minutes_count() {
        verdict.amount(
                35, install("W1").setup(20).at(60), install("W2").setup(15).at(180));
    }

    @Test
    void no_set_up_costs_nothing() {
        verdict.amount(0, install("W1").at(60));
    }
}
