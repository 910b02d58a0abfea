package drylap.planning.solver;

import static drylap.planning.solver.StopFixture.install;

import org.junit.jupiter.api.Test;

class TravelTests {
    final Verdict verdict = Verdict.of(factory -> new CostConstraints().travel(factory));

    @Test
    void the_way_out_and_the_way_back_count() {
        verdict.amount(50, install("W1").road(20).at(60), install("W2").last(30).at(120));
    }

    @Test
    void staying_on_a_site_costs_nothing() {
        verdict.amount(0, install("W1").at(60));
    }
}
