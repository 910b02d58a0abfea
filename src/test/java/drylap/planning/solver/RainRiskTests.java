package drylap.planning.solver;

import static drylap.planning.solver.StopFixture.install;

import org.junit.jupiter.api.Test;

class RainRiskTests {
    final Verdict verdict = Verdict.of(factory -> new CostConstraints().rainRisk(factory));

    @Test
    void thousandths_add_up() {
        verdict.amount(
                350, install("W1").rain(100).at(0), install("W2").rain(250).at(60));
    }

    @Test
    void a_dry_forecast_costs_nothing() {
        verdict.amount(0, install("W1").at(0));
    }
}
