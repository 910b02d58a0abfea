package drylap.planning.solver;

import static drylap.planning.solver.StopFixture.HOUR;
import static drylap.planning.solver.StopFixture.MONDAY;
import static drylap.planning.solver.StopFixture.TUESDAY;
import static drylap.planning.solver.StopFixture.install;

import org.junit.jupiter.api.Test;

class ChangedTests {
    final Verdict verdict = Verdict.of(factory -> new CostConstraints().changed(factory));

    @Test
    void another_crew_counts() {
        verdict.amount(1, install("W1").published(1, MONDAY).by(0).at(0));
    }

    @Test
    void another_date_counts() {
        verdict.amount(1, install("W1").published(0, TUESDAY).at(0));
    }

    @Test
    void a_visit_that_is_now_left_out_counts() {
        verdict.amount(1, install("W1").published(0, MONDAY).unplanned());
    }

    @Test
    void another_hour_of_the_same_day_is_no_change() {
        verdict.amount(0, install("W1").published(0, MONDAY).at(3 * HOUR));
    }

    @Test
    void work_that_was_not_published_is_no_change() {
        verdict.amount(0, install("W1").at(0));
    }
}
