package drylap.load;

import java.time.Duration;
import java.util.Random;

/**
 * How long people look at what they have before they ask again: exponential, as of people who come independently of one another, at least one
 * second and at most five times the mean.
 */
final class Think {
    static final Duration MEAN = Duration.ofSeconds(60);
    private static final double SHORTEST_S = 1;
    private static final double MOST_MEANS = 5;

    private Think() {}

    static Duration of(Random draw) {
        double seconds = -MEAN.toSeconds() * Math.log(1 - draw.nextDouble());
        return Duration.ofMillis(Math.round(Math.clamp(seconds, SHORTEST_S, MOST_MEANS * MEAN.toSeconds()) * 1_000));
    }
}
