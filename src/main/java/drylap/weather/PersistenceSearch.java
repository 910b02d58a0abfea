package drylap.weather;

import drylap.weather.RainPersistence.Beyond;
import drylap.weather.RainPersistence.Bound;
import drylap.weather.RainPersistence.Found;
import drylap.weather.RainPersistence.Told;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;

/** Halves the range of correlations: more persistent rain is one shower instead of several, so the chain's chance only falls. */
final class PersistenceSearch {
    /** Chances are told in whole percent; so little is rounding of ours. */
    private static final double SAME = 1e-9;

    private static final int HALVINGS = 60;

    private PersistenceSearch() {}

    static RainPersistence of(Told told) {
        return impossible(told)
                .<RainPersistence>map(bound -> new Beyond(bound, told.chained(bound == Bound.LIKELIEST_HOUR ? 1 : 0)))
                .orElseGet(() -> solved(told::chained, told.together()));
    }

    static RainPersistence of(List<Told> all) {
        if (all.isEmpty()) throw new IllegalArgumentException("nothing was told of hours and of a period together");
        return solved(
                rho -> all.stream().mapToDouble(told -> told.chained(rho)).sum(),
                all.stream().mapToDouble(Told::together).sum());
    }

    static Optional<Bound> impossible(Told told) {
        double[] hourly = told.chances();
        if (told.together() < RainChance.atLeast(hourly) - SAME) return Optional.of(Bound.LIKELIEST_HOUR);
        if (told.together() > RainChance.atMost(hourly) + SAME) return Optional.of(Bound.SUM_OF_HOURS);
        return Optional.empty();
    }

    private static RainPersistence solved(DoubleUnaryOperator chained, double together) {
        double independent = chained.applyAsDouble(0);
        double lasting = chained.applyAsDouble(1);
        if (together > independent + SAME) return new Beyond(Bound.INDEPENDENT_HOURS, independent);
        if (independent - lasting <= SAME) return new Beyond(Bound.NOTHING_TO_TELL, independent);
        if (together <= lasting + SAME) return new Beyond(Bound.LASTING_RAIN, lasting);
        double low = 0;
        double high = 1;
        for (int halving = 0; halving < HALVINGS; halving++) {
            double middle = (low + high) / 2;
            if (chained.applyAsDouble(middle) > together) low = middle;
            else high = middle;
        }
        return new Found(low);
    }
}
