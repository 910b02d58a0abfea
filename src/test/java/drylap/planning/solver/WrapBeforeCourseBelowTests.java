package drylap.planning.solver;

import static drylap.planning.solver.StopFixture.clad;
import static drylap.planning.solver.StopFixture.wrap;

import org.junit.jupiter.api.Test;

class WrapBeforeCourseBelowTests {
    final Verdict verdict = Verdict.of(factory -> new OrderConstraints().wrapBeforeCourseBelow(factory));

    @Test
    void a_wrap_before_the_wrap_below_counts_each() {
        verdict.amount(
                2,
                wrap("W1").level(3).above(1).at(30),
                wrap("W2").at(0),
                wrap("W3").at(30));
    }

    @Test
    void a_wrap_as_the_one_below_ends_is_fine() {
        verdict.amount(0, wrap("W1").level(3).above(1).at(60), wrap("W2").at(0));
    }

    @Test
    void a_wrap_above_one_that_is_unplanned_counts() {
        verdict.amount(1, wrap("W1").level(2).above(1).at(60), wrap("W2").unplanned());
    }

    @Test
    void cladding_below_does_not_matter() {
        verdict.amount(0, wrap("W1").level(2).above(1).at(60), clad("W2").at(60));
    }
}
