package drylap.planning.solver;

import static drylap.planning.solver.StopFixture.DAY;
import static drylap.planning.solver.StopFixture.TUESDAY;
import static drylap.planning.solver.StopFixture.install;

import org.junit.jupiter.api.Test;

class CrewDaysTests {
    final Verdict verdict = Verdict.of(factory -> new CostConstraints().crewDays(factory));

    @Test
    void a_crew_and_date_counts_once() {
        verdict.amount(1, install("W1").at(0), install("W2").at(60));
    }

    @Test
    void each_date_and_each_crew_counts() {
        verdict.amount(
                3,
                install("W1").at(0),
                install("W2").on(TUESDAY).at(DAY),
                install("W3").by(1).at(0));
    }

    @Test
    void a_plan_without_visits_has_no_crew_days() {
        verdict.amount(0, install("W1").unplanned());
    }
}
