package drylap.planning.solver;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class ReliefTests {
    private final Patience patience = new Relief();

    @Test
    void it_has_no_end_before_two_hundred_steps_were_seen() {
        steps(200, 10, 400);
        assertThat(patience.after(1000)).isEqualTo(Long.MAX_VALUE);
        assertThat(patience.within(1000)).isEqualTo(Long.MAX_VALUE);
        steps(1, 10, 400);
        assertThat(patience.after(1000)).isEqualTo(1000);
        assertThat(patience.within(1000)).isEqualTo(1400);
    }

    @Test
    void within_a_trade_it_waits_for_as_much_as_was_given_back_lately() {
        steps(201, 10, 400);
        steps(1, -3, 700);
        assertThat(patience.within(0)).isEqualTo(700);
        steps(693, 10, 20); // 0.999 to the power of 693 is a half
        assertThat(patience.within(0)).isBetween(345L, 355L);
    }

    @Test
    void what_changes_no_cost_teaches_nothing() {
        steps(201, 10, 400);
        steps(500, 0, 900);
        assertThat(patience.within(0)).isEqualTo(400);
    }

    private void steps(int count, long dearer, long relief) {
        for (int i = 0; i < count; i++) patience.note(dearer, relief);
    }
}
