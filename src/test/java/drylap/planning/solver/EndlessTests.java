package drylap.planning.solver;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class EndlessTests {
    @Test
    void where_little_is_to_be_decided_it_has_no_end() {
        Patience endless = Endless.ENDLESS;
        for (int i = 0; i < 500; i++) endless.note(10, 10);
        assertThat(endless.after(1000)).isEqualTo(Long.MAX_VALUE);
        assertThat(endless.within(1000)).isEqualTo(Long.MAX_VALUE);
    }
}
