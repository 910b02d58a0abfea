package drylap.climate;

import java.util.Arrays;
import java.util.BitSet;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.statistics.distribution.ContinuousDistribution;
import org.apache.commons.statistics.distribution.GammaDistribution;

/**
 * What chance gives a forecast cell in one trial, the same for all its sites: by hour, whether it rains and how much. Used again
 * for cell after cell, so that it stays in the processor's cache.
 */
final class CellLots {
    final double[] rain;
    /** Of mean 1; drawn only where somebody asks, since few hours are wet. */
    private final double[] amount;

    private final BitSet drawn = new BitSet();
    private ContinuousDistribution.Sampler amounts;

    CellLots(int hours) {
        rain = new double[hours];
        amount = new double[hours];
        amounts = () -> 1;
    }

    /** @param shape of the gamma distribution of amounts */
    void draw(UniformRandomProvider source, double shape) {
        drawn.clear();
        Arrays.setAll(rain, _ -> source.nextDouble());
        amounts = GammaDistribution.of(shape, 1 / shape).createSampler(source);
    }

    /** The same for whoever asks. */
    double amount(int hour) {
        if (!drawn.get(hour)) {
            amount[hour] = amounts.sample();
            drawn.set(hour);
        }
        return amount[hour];
    }
}
