package drylap.intake.generate;

import java.util.List;
import java.util.Random;

/** Chance from a seed. {@link Random} is specified to the last bit, so a seed means the same on every machine. */
final class Dice {
    private final Random random;

    Dice(long seed) {
        random = new Random(seed);
    }

    /** Both ends may come up. */
    int whole(int least, int most) {
        return least + random.nextInt(most - least + 1);
    }

    double between(double least, double most) {
        return least + (most - least) * random.nextDouble();
    }

    boolean chance(double probability) {
        return random.nextDouble() < probability;
    }

    <T> T pick(List<T> from) {
        return from.get(random.nextInt(from.size()));
    }

    /** Dice of their own for a part, so that one part's throws do not move those of the next. */
    Dice split() {
        return new Dice(random.nextLong());
    }

    static double rounded(double value, int decimals) {
        double scale = StrictMath.pow(10, decimals);
        return StrictMath.rint(value * scale) / scale + 0.0;
    }
}
