package drylap.bench;

import static org.assertj.core.api.Assertions.assertThat;

import drylap.bench.CostCurve.Line;
import drylap.planning.PlanProgress;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;

class CostCurveTests {
    private static PlanProgress after(long millis, long medium, long soft) {
        return new PlanProgress(Duration.ofMillis(millis), 1, medium, soft, 1, 0);
    }

    /** Five decades from 1 ms at 70 to 100 s at 600; 0 % at 340, 150 % at 20. */
    @Test
    void a_run_comes_down_to_where_it_ended() {
        String svg = CostCurve.svg(
                List.of(new Line("30", List.of(after(1, 0, 250), after(100, 0, 150), after(100_000, 0, 100)))));

        assertThat(svg).contains("points=\"70.0,20.0 282.0,233.3 600.0,340.0\"").contains(">30</text>");
    }

    @Test
    void what_is_left_out_counts_as_well() {
        String svg = CostCurve.svg(List.of(new Line("8", List.of(after(1, 50, 100), after(100_000, 0, 100)))));

        assertThat(svg).contains("points=\"70.0,233.3 600.0,340.0\"");
    }
}
