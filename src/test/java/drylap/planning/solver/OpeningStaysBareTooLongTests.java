package drylap.planning.solver;

import static drylap.planning.solver.StopFixture.DAY;
import static drylap.planning.solver.StopFixture.install;
import static drylap.planning.solver.StopFixture.wrap;

import org.junit.jupiter.api.Test;

class OpeningStaysBareTooLongTests {
    final Verdict verdict = Verdict.of(factory -> new OrderConstraints().openingStaysBareTooLong(factory));

    @Test
    void a_bare_opening_wrapped_after_its_limit_counts() {
        verdict.amount(
                1,
                install("W1").barrierAfterwards().at(0),
                wrap("W1").barrierAfterwards().at(14 * DAY + 1));
    }

    @Test
    void a_bare_opening_wrapped_at_its_limit_is_fine() {
        verdict.amount(
                0,
                install("W1").barrierAfterwards().at(0),
                wrap("W1").barrierAfterwards().at(14 * DAY));
    }

    @Test
    void with_the_barrier_first_nothing_is_bare() {
        verdict.amount(0, install("W1").at(0), wrap("W1").at(15 * DAY));
    }

    @Test
    void a_neighbour_does_not_matter() {
        verdict.amount(
                0,
                install("W1").barrierAfterwards().at(0),
                wrap("W2").barrierAfterwards().at(15 * DAY));
    }
}
