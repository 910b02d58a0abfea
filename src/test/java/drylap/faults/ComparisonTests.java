package drylap.faults;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

class ComparisonTests {
    static final Set<String> ASKED = Set.of("mark 1 A PAN", "mark 1 A WIN", "mark 1 B PAN");
    static final Set<String> CONFIRMED = Set.of("mark 1 A PAN", "mark 1 A WIN");

    final Map<String, Long> found = new HashMap<>(Map.of("mark 1 A PAN", 1L, "mark 1 A WIN", 1L));

    @Test
    void what_is_there_once_is_clean_and_what_was_not_confirmed_may_be_there_or_not() {
        assertThat(compared().clean()).isTrue();
        found.put("mark 1 B PAN", 1L);
        assertThat(compared().clean()).isTrue();
    }

    @Test
    void a_planted_lost_operation_is_named() {
        found.remove("mark 1 A WIN");
        assertThat(compared()).isEqualTo(new Comparison(java.util.List.of("mark 1 A WIN"), java.util.List.of()));
    }

    @Test
    void a_planted_doubled_operation_is_named_confirmed_or_not() {
        found.put("mark 1 A PAN", 2L);
        found.put("mark 1 B PAN", 3L);
        assertThat(compared().lost()).isEmpty();
        assertThat(compared().doubled()).containsExactly("mark 1 A PAN (2 times)", "mark 1 B PAN (3 times)");
    }

    @Test
    void what_nobody_asked_for_is_named() {
        found.put("mark 9 Z PAN", 1L);
        assertThat(compared().doubled()).containsExactly("mark 9 Z PAN (1 times)");
    }

    Comparison compared() {
        return Comparison.of(ASKED, CONFIRMED, found);
    }
}
