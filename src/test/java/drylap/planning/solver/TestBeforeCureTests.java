package drylap.planning.solver;

import static drylap.planning.solver.StopFixture.DAY;
import static drylap.planning.solver.StopFixture.HOUR;
import static drylap.planning.solver.StopFixture.install;
import static drylap.planning.solver.StopFixture.test;

import org.junit.jupiter.api.Test;

class TestBeforeCureTests {
    final Verdict verdict = Verdict.of(factory -> new OrderConstraints().testBeforeCure(factory));

    @Test
    void a_test_before_the_sealant_has_cured_counts() {
        verdict.amount(1, install("W1").at(0), test("W1").at(HOUR + DAY - 1));
    }

    @Test
    void a_test_as_the_cure_ends_is_fine() {
        verdict.amount(0, install("W1").at(0), test("W1").at(HOUR + DAY));
    }

    @Test
    void a_test_of_an_opening_that_is_not_installed_counts() {
        verdict.amount(1, install("W1").unplanned(), test("W1").at(DAY));
    }

    @Test
    void the_install_of_another_opening_does_not_matter() {
        verdict.amount(0, install("W2").at(DAY), test("W1").at(DAY));
    }
}
