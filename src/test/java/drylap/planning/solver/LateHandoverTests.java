package drylap.planning.solver;

import static drylap.planning.solver.StopFixture.DAY;
import static drylap.planning.solver.StopFixture.HOUR;
import static drylap.planning.solver.StopFixture.clad;

import org.junit.jupiter.api.Test;

class LateHandoverTests {
    final Verdict verdict = Verdict.of(factory -> new CostConstraints().lateHandover(factory));

    @Test
    void cladding_past_the_due_date_counts_started_hours() {
        verdict.amount(2, clad("W1").due(0).at(1));
    }

    @Test
    void cladding_that_ends_with_the_due_date_costs_nothing() {
        verdict.amount(0, clad("W1").due(HOUR).at(0));
    }

    @Test
    void the_last_cladding_of_a_wall_counts_and_only_once() {
        verdict.amount(3, clad("W1").due(0).at(0), clad("W2").due(0).level(2).at(2 * HOUR));
    }

    @Test
    void unplanned_cladding_counts_to_the_end_of_the_horizon() {
        verdict.amount(120, clad("W1").due(0).unplanned());
    }

    @Test
    void a_wall_without_a_due_date_is_never_late() {
        verdict.amount(0, clad("W1").at(3 * DAY));
    }
}
