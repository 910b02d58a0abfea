package drylap.planning.solver;

import static drylap.planning.solver.StopFixture.HOUR;
import static drylap.planning.solver.StopFixture.install;

import org.junit.jupiter.api.Test;

class OvertimeTests {
    final Verdict verdict = Verdict.of(factory -> new CostConstraints().overtime(factory));

    @Test
    void minutes_after_the_shift_count_with_the_way_back() {
        verdict.amount(40, install("W1").last(10).at(7 * HOUR + 30));
    }

    @Test
    void being_back_as_the_shift_ends_costs_nothing() {
        verdict.amount(0, install("W1").last(30).at(6 * HOUR + 30));
    }

    @Test
    void only_the_last_stop_of_a_day_counts() {
        verdict.amount(0, install("W1").at(7 * HOUR + 30));
    }
}
