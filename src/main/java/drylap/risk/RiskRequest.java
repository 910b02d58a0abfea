package drylap.risk;

import drylap.climate.MonthlyNormals;
import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What a reckoning of the risk is told beside the plan.
 *
 * @param from what is still to do goes on from then; absent: the plan's start
 * @param normals what months bring beyond the forecast; none: taken from the forecasts that there are, or assumed
 */
public record RiskRequest(int trials, long seed, @Nullable Instant from, List<MonthlyNormals> normals) {
    public static final int USUAL_TRIALS = 2000;
    public static final int FEWEST_TRIALS = 100;
    public static final int MOST_TRIALS = 100_000;

    public RiskRequest {
        if (trials < FEWEST_TRIALS || trials > MOST_TRIALS)
            throw new IllegalArgumentException(
                    "%d trials; accepted: %d to %d".formatted(trials, FEWEST_TRIALS, MOST_TRIALS));
        normals = List.copyOf(normals);
    }

    public RiskRequest(int trials, long seed) {
        this(trials, seed, null, List.of());
    }
}
