package drylap.planning.solver;

import static drylap.planning.solver.StopFixture.DAY;
import static drylap.planning.solver.StopFixture.HOUR;
import static drylap.planning.solver.StopFixture.install;
import static drylap.planning.solver.StopFixture.test;
import static drylap.planning.solver.StopFixture.wrap;

import org.junit.jupiter.api.Test;

class WrapBeforeCourseIsReadyTests {
    final Verdict verdict = Verdict.of(factory -> new OrderConstraints().wrapBeforeCourseIsReady(factory));

    @Test
    void a_wrap_before_an_install_of_its_course_counts_each() {
        verdict.amount(
                2, wrap("W1").at(HOUR), install("W2").at(HOUR), test("W3").at(HOUR));
    }

    @Test
    void a_wrap_as_the_last_install_ends_is_fine() {
        verdict.amount(
                0, wrap("W1").at(HOUR), install("W1").at(0), install("W2").at(0));
    }

    @Test
    void a_wrap_while_an_install_is_unplanned_counts() {
        verdict.amount(1, wrap("W1").at(DAY), install("W2").unplanned());
    }

    @Test
    void another_level_or_wall_does_not_matter() {
        verdict.amount(
                0,
                wrap("W1").at(0),
                install("W2").level(2).at(0),
                install("W3").wall("south").at(0));
    }
}
