package drylap.planning.solver;

import static drylap.planning.solver.StopFixture.DAY;
import static drylap.planning.solver.StopFixture.install;
import static drylap.planning.solver.StopFixture.test;

import org.junit.jupiter.api.Test;

class TestBeforeCureOfAFinishedInstallTests {
    final Verdict verdict = Verdict.of(factory -> new OrderConstraints().testBeforeCureOfAFinishedInstall(factory));

    @Test
    void a_test_before_an_earlier_install_has_cured_counts() {
        verdict.amount(1, test("W1").notBefore(DAY).at(DAY - 1));
    }

    @Test
    void a_test_as_that_cure_ends_is_fine() {
        verdict.amount(0, test("W1").notBefore(DAY).at(DAY));
    }

    @Test
    void an_install_is_judged_elsewhere() {
        verdict.amount(0, install("W1").notBefore(DAY).at(0));
    }
}
