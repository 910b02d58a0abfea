package drylap.planning.solver;

import static drylap.planning.solver.StopFixture.DAY;
import static drylap.planning.solver.StopFixture.HOUR;
import static drylap.planning.solver.StopFixture.wrap;

import org.junit.jupiter.api.Test;

class FinishedInstallWaitsTooLongTests {
    final Verdict verdict = Verdict.of(factory -> new OrderConstraints().finishedInstallWaitsTooLong(factory));

    @Test
    void a_wrap_past_the_limit_of_an_earlier_install_counts() {
        verdict.amount(1, wrap("W1").endsBy(HOUR).at(1));
    }

    @Test
    void a_wrap_that_ends_at_that_limit_is_fine() {
        verdict.amount(0, wrap("W1").endsBy(HOUR).at(0));
    }

    @Test
    void without_an_earlier_install_there_is_no_such_limit() {
        verdict.amount(0, wrap("W1").at(90 * DAY));
    }
}
