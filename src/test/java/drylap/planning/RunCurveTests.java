package drylap.planning;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class RunCurveTests {
    private final RunCurve curve = new RunCurve();

    @Test
    void keeps_no_point_before_there_is_a_plan() {
        assertThat(curve.next(new PlanProgress(Duration.ofMillis(250), 0, 0, 0, 0, 0)))
                .isEmpty();
    }

    @Test
    void keeps_a_cost_once() {
        assertThat(at(1_000, 70)).isPresent();
        assertThat(at(2_000, 70)).isEmpty();
        assertThat(at(3_000, 60)).isPresent();
    }

    @Test
    void a_lower_cost_waits_until_the_run_is_a_twentieth_older() {
        assertThat(at(1_000, 70)).isPresent();
        assertThat(at(1_050, 60)).isEmpty();
        assertThat(at(1_051, 60)).isPresent();
    }

    /** An hour at four looks a second, each with a better plan: ln(3600 / 0.25) / ln(1.05) is 196.3, worked out by hand. */
    @Test
    void an_hour_of_steady_gain_keeps_no_more_than_some_two_hundred() {
        List<RunPoint> kept = new ArrayList<>();
        for (int look = 1; look <= 14_400; look++)
            at(look * 250L, 1_000_000 - look).ifPresent(kept::add);

        assertThat(kept).hasSizeBetween(100, 200);
        assertThat(kept.getLast().at()).isGreaterThan(Duration.ofMinutes(57));
    }

    private Optional<RunPoint> at(long ms, long soft) {
        return curve.next(new PlanProgress(Duration.ofMillis(ms), 1, 0, soft, 9, 0));
    }
}
