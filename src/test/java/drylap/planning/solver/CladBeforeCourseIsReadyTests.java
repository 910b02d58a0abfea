package drylap.planning.solver;

import static drylap.planning.solver.StopFixture.HOUR;
import static drylap.planning.solver.StopFixture.clad;
import static drylap.planning.solver.StopFixture.install;
import static drylap.planning.solver.StopFixture.wrap;

import org.junit.jupiter.api.Test;

class CladBeforeCourseIsReadyTests {
    final Verdict verdict = Verdict.of(factory -> new OrderConstraints().cladBeforeCourseIsReady(factory));

    @Test
    void cladding_before_wrap_or_install_of_the_course_counts_each() {
        verdict.amount(
                2, clad("W1").at(HOUR), wrap("W2").at(HOUR), install("W3").unplanned());
    }

    @Test
    void cladding_as_the_wrap_ends_is_fine() {
        verdict.amount(0, clad("W1").at(HOUR), wrap("W1").at(0));
    }

    @Test
    void cladding_of_the_same_course_at_once_is_fine() {
        verdict.amount(0, clad("W1").at(0), clad("W2").at(0));
    }

    @Test
    void another_level_does_not_matter() {
        verdict.amount(0, clad("W1").at(0), wrap("W2").level(2).at(0));
    }
}
