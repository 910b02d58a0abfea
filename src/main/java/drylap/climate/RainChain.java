package drylap.climate;

import drylap.weather.RainChance;
import java.util.BitSet;

/**
 * Wet and dry hours that remember the hour before: each hour is wet with its own chance, and neighbours correlate as far as
 * two such chances can (Fréchet). With one chance for all hours it is the stationary two-state chain.
 */
final class RainChain {
    /** By hour, the chance after a dry hour and that after a wet one: side by side, since a trial reads them all. */
    private final float[] chances;

    private RainChain(int hours) {
        chances = new float[2 * hours];
    }

    static RainChain of(double[] chances, double rho) {
        RainChain chain = new RainChain(chances.length);
        for (int hour = 0; hour < chances.length; hour++) {
            double before = hour == 0 ? 0 : chances[hour - 1];
            double both = hour == 0 ? 0 : RainChance.bothWet(rho, before, chances[hour]);
            chain.chances[2 * hour] = (float) (before < 1 ? (chances[hour] - both) / (1 - before) : chances[hour]);
            chain.chances[2 * hour + 1] = (float) (before > 0 ? both / before : chances[hour]);
        }
        return chain;
    }

    /** Marks the wet hours; one number from 0 to 1 an hour decides. */
    void draw(double[] lots, BitSet wet) {
        wet.clear();
        boolean rains = false;
        for (int hour = 0; 2 * hour < chances.length; hour++) {
            rains = lots[hour] < chances[2 * hour + (rains ? 1 : 0)];
            if (rains) wet.set(hour);
        }
    }

    /** The chance of each of {@code hours} hours alike that gives this chance of rain in all of them together. */
    static double hourly(double together, int hours, double rho) {
        double low = 0;
        double high = together;
        for (int step = 0; step < 60; step++) {
            double middle = (low + high) / 2;
            if (RainChance.persistent(rho, middle, hours) < together) low = middle;
            else high = middle;
        }
        return (low + high) / 2;
    }
}
