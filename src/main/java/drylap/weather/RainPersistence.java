package drylap.weather;

import java.util.List;

/**
 * How strongly neighbouring hours of rain must correlate for the chances of single hours to give the chance that is told for
 * all of them together.
 */
public sealed interface RainPersistence {
    /** A correlation of 0 or more and less than 1 explains what was told. */
    record Found(double rho) implements RainPersistence {}

    /**
     * None does; the chain comes nearest at an end of its range.
     *
     * @param reached the chance that the chain gives there, of many tellings the sum of theirs
     */
    record Beyond(Bound bound, double reached) implements RainPersistence {}

    /** What the chance of all hours together lies beyond. */
    enum Bound {
        LIKELIEST_HOUR(
                "less than the likeliest hour alone, which no model can give: the two chances are not of the same event"),
        LASTING_RAIN("no more than the chain gives with rain that never changes: persistence has no say"),
        INDEPENDENT_HOURS("more than independent hours would give: showers that make room for each other"),
        SUM_OF_HOURS("more than the hours' chances together, which no model can give: not the same event"),
        NOTHING_TO_TELL("the hours give the same chance however rain lasts");

        private final String words;

        Bound(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    /** A chance for several hours together, beside the chances of the hours themselves. */
    record Told(List<Double> hourly, double together) {
        public Told {
            hourly = List.copyOf(hourly);
            if (hourly.size() < 2)
                throw new IllegalArgumentException("%d hours cannot tell how rain lasts".formatted(hourly.size()));
            hourly.forEach(RainChance::checked);
            RainChance.checked(together);
        }

        /** The chance for all the hours that a chain with this correlation gives. */
        double chained(double rho) {
            return RainChance.persistent(rho, chances());
        }

        /** How far apart the chances are that the most and the least lasting rain give: none where it says nothing. */
        public double room() {
            return chained(0) - chained(1);
        }

        /** Whether some model can give it: what Fréchet's inequalities allow. */
        public boolean possible() {
            return PersistenceSearch.impossible(this).isEmpty();
        }

        double[] chances() {
            return hourly.stream().mapToDouble(Double::doubleValue).toArray();
        }
    }

    /** The correlation that one telling asks for. */
    static RainPersistence of(Told told) {
        return PersistenceSearch.of(told);
    }

    /**
     * The one correlation that many tellings ask for: that at which the chain's chances add up to those told. A telling that no
     * model can give is not of the same event, and is to be left out.
     */
    static RainPersistence of(List<Told> all) {
        return PersistenceSearch.of(all);
    }
}
