package drylap.planning.solver;

import static drylap.planning.solver.StopFixture.clad;

import org.junit.jupiter.api.Test;

class CladBeforeCourseBelowTests {
    final Verdict verdict = Verdict.of(factory -> new OrderConstraints().cladBeforeCourseBelow(factory));

    @Test
    void cladding_before_the_cladding_below_counts() {
        verdict.amount(1, clad("W1").level(2).above(1).at(59), clad("W2").at(0));
    }

    @Test
    void cladding_as_the_cladding_below_ends_is_fine() {
        verdict.amount(0, clad("W1").level(2).above(1).at(60), clad("W2").at(0));
    }

    @Test
    void the_lowest_level_waits_for_none() {
        verdict.amount(0, clad("W1").at(0), clad("W2").level(2).above(1).at(60));
    }
}
