package drylap.planning.solver;

import static drylap.planning.solver.StopFixture.DAY;
import static drylap.planning.solver.StopFixture.install;
import static drylap.planning.solver.StopFixture.wrap;

import org.junit.jupiter.api.Test;

class ApronWaitsTooLongTests {
    final Verdict verdict = Verdict.of(factory -> new OrderConstraints().apronWaitsTooLong(factory));

    @Test
    void a_wrap_later_than_the_limit_after_an_install_counts() {
        verdict.amount(1, install("W1").at(0), wrap("W2").at(60 * DAY + 1));
    }

    @Test
    void a_wrap_that_ends_at_the_limit_is_fine() {
        verdict.amount(0, install("W1").at(0), wrap("W2").at(60 * DAY));
    }

    @Test
    void another_course_does_not_matter() {
        verdict.amount(0, install("W1").level(2).at(0), wrap("W2").at(61 * DAY));
    }
}
