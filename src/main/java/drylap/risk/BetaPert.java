package drylap.risk;

import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.statistics.distribution.BetaDistribution;
import org.apache.commons.statistics.distribution.ContinuousDistribution;

/**
 * A quantity of which the least, the likeliest and the most are known. Its variance is that of the beta distribution, not the
 * ((most - least) / 6)² of the textbooks, since what is drawn is drawn from the beta.
 */
record BetaPert(double least, double likeliest, double most) {
    BetaPert {
        if (!(least <= likeliest && likeliest <= most))
            throw new IllegalArgumentException(
                    "least %s, likeliest %s and most %s are not in order".formatted(least, likeliest, most));
    }

    double mean() {
        return (least + 4 * likeliest + most) / 6;
    }

    double variance() {
        return (mean() - least) * (most - mean()) / 7;
    }

    /** The value that is not exceeded with this chance. */
    double quantile(double chance) {
        return certain() ? likeliest : value(beta().inverseCumulativeProbability(chance));
    }

    /** Draws of the quantity; a certain one takes nothing from the source. */
    ContinuousDistribution.Sampler sampler(UniformRandomProvider source) {
        if (certain()) return () -> likeliest;
        ContinuousDistribution.Sampler shares = beta().createSampler(source);
        return () -> value(shares.sample());
    }

    private boolean certain() {
        return least == most;
    }

    private double value(double share) {
        return least + share * (most - least);
    }

    private BetaDistribution beta() {
        double range = most - least;
        return BetaDistribution.of(1 + 4 * (likeliest - least) / range, 1 + 4 * (most - likeliest) / range);
    }
}
