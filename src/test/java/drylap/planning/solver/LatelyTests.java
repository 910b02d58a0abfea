package drylap.planning.solver;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class LatelyTests {
    private final Patience patience = new Lately();

    @Test
    void it_has_no_end_before_two_hundred_steps_were_seen() {
        steps(200, 10);
        assertThat(patience.after(1000)).isEqualTo(Long.MAX_VALUE);
        steps(1, 10);
        assertThat(patience.after(1000)).isLessThan(Long.MAX_VALUE);
    }

    @Test
    void it_ends_at_four_times_the_dearest_step_of_late() {
        steps(201, 10);
        assertThat(patience.after(1000)).isEqualTo(1040);
    }

    @Test
    void every_trade_is_looked_at_to_its_end() {
        steps(201, 10);
        assertThat(patience.within(1000)).isEqualTo(Long.MAX_VALUE);
    }

    @Test
    void it_shrinks_while_steps_make_the_plan_cheaper() {
        steps(201, 1000);
        steps(346, -5); // 0.998 to the power of 346 is a half
        assertThat(patience.after(0)).isBetween(1980L, 2010L);
    }

    private void steps(int count, long dearer) {
        for (int i = 0; i < count; i++) patience.note(dearer, 0);
    }
}
