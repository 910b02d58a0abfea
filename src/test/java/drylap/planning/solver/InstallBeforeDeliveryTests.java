package drylap.planning.solver;

import static drylap.planning.solver.StopFixture.DAY;
import static drylap.planning.solver.StopFixture.clad;
import static drylap.planning.solver.StopFixture.install;

import org.junit.jupiter.api.Test;

class InstallBeforeDeliveryTests {
    final Verdict verdict = Verdict.of(factory -> new CrewConstraints().installBeforeDelivery(factory));

    @Test
    void an_install_before_the_window_is_delivered_counts() {
        verdict.amount(1, install("W1").notBefore(DAY).at(DAY - 1));
    }

    @Test
    void an_install_at_the_first_minute_of_delivery_is_fine() {
        verdict.amount(0, install("W1").notBefore(DAY).at(DAY));
    }

    @Test
    void other_tasks_do_not_wait_for_delivery() {
        verdict.amount(0, clad("W1").notBefore(DAY).at(0));
    }
}
