package drylap.planning.solver;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class PatienceTests {
    private final Patience patience = new Patience(false, false);

    @Test
    void it_has_no_end_before_two_hundred_steps_were_seen() {
        steps(200, 10);
        assertThat(patience.dearest(1000)).isEqualTo(Long.MAX_VALUE);
        steps(1, 10);
        assertThat(patience.dearest(1000)).isLessThan(Long.MAX_VALUE);
    }

    @Test
    void it_ends_at_four_times_the_dearest_step_of_late() {
        steps(201, 10);
        assertThat(patience.dearest(1000)).isEqualTo(1040);
    }

    @Test
    void within_a_trade_it_ends_at_twenty_times_that() {
        steps(201, 10);
        assertThat(patience.dearestWithin(1000)).isEqualTo(1200);
    }

    @Test
    void where_every_trade_is_looked_at_to_its_end_only_what_comes_after_one_is_too_dear() {
        Patience patient = new Patience(false, true);
        for (int i = 0; i < 201; i++) patient.note(10);
        assertThat(patient.dearestWithin(1000)).isEqualTo(Long.MAX_VALUE);
        assertThat(patient.dearest(1000)).isEqualTo(1040);
    }

    @Test
    void it_shrinks_while_steps_make_the_plan_cheaper() {
        steps(201, 1000);
        steps(346, -5); // 0.998 to the power of 346 is a half
        assertThat(patience.dearest(0)).isBetween(1980L, 2010L);
    }

    @Test
    void where_little_is_to_be_decided_it_has_no_end() {
        Patience endless = new Patience(true, false);
        for (int i = 0; i < 500; i++) endless.note(10);
        assertThat(endless.dearest(1000)).isEqualTo(Long.MAX_VALUE);
    }

    private void steps(int count, long dearer) {
        for (int i = 0; i < count; i++) patience.note(dearer);
    }
}
