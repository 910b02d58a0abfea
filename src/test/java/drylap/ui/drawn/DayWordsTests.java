package drylap.ui.drawn;

import static org.assertj.core.api.Assertions.assertThat;

import drylap.kernel.TimeWindow;
import java.time.Instant;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class DayWordsTests {
    private static Instant minute(int m) {
        return Instant.EPOCH.plusSeconds(60L * m);
    }

    private static List<TimeWindow> windows(BitSet marked) {
        List<TimeWindow> all = new ArrayList<>();
        for (int from = marked.nextSetBit(0); from >= 0; ) {
            int until = marked.nextClearBit(from);
            all.add(new TimeWindow(minute(from), minute(until)));
            from = marked.nextSetBit(until);
        }
        return all;
    }

    /** Minute by minute is slower and cannot be wrong in the same way. */
    @Test
    void what_is_left_is_what_a_count_by_minutes_leaves() {
        Random dice = new Random(5);
        for (int round = 0; round < 2000; round++) {
            BitSet first = new BitSet();
            BitSet others = new BitSet();
            for (int m = 0; m < 40; m++) {
                first.set(m, dice.nextBoolean());
                others.set(m, dice.nextInt(3) == 0);
            }
            BitSet left = (BitSet) first.clone();
            left.andNot(others);

            assertThat(DayWords.without(windows(first), windows(others))).isEqualTo(windows(left));
            assertThat(DayWords.length(windows(left)).toMinutes()).isEqualTo(left.cardinality());
        }
    }
}
