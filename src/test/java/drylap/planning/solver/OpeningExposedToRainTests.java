package drylap.planning.solver;

import static drylap.planning.solver.StopFixture.DAY;
import static drylap.planning.solver.StopFixture.HOUR;
import static drylap.planning.solver.StopFixture.install;

import org.junit.jupiter.api.Test;

class OpeningExposedToRainTests {
    final Verdict verdict = Verdict.of(factory -> new AbsenceConstraints().openingExposedToRain(factory));

    @Test
    void an_open_opening_closed_after_the_rain_begins_counts() {
        verdict.amount(5000, install("W1").coverBy(HOUR).at(1));
    }

    @Test
    void one_that_is_closed_as_the_rain_begins_is_fine() {
        verdict.amount(0, install("W1").coverBy(HOUR).at(0));
    }

    @Test
    void one_that_is_never_closed_counts() {
        verdict.amount(5000, install("W1").coverBy(HOUR).unplanned());
    }

    @Test
    void an_opening_that_is_not_open_does_not_count() {
        verdict.amount(0, install("W1").at(9 * DAY));
    }
}
