package drylap.weather;

/**
 * Weather that is wet or dry day by day (or hour by hour) and remembers the step before: a two-state Markov chain, with what
 * follows from it in closed form. A simulation draws its steps from {@link #wetAfter}, starts in the long run with the chance
 * {@link #longRunWet}, and can be held against the other figures here. The reckoning is that of Gabriel and Neumann (QJRMS 88,
 * 1962).
 *
 * @param wetAfterWet the chance of a wet step after a wet one
 * @param wetAfterDry the chance of a wet step after a dry one
 */
public record WetDryChain(double wetAfterWet, double wetAfterDry) {
    public WetDryChain {
        RainChance.checked(wetAfterWet);
        RainChance.checked(wetAfterDry);
    }

    /** From counted steps: so many of the wet ones, and of the dry ones, were followed by a wet one. */
    public static WetDryChain counted(int wetAfterWet, int wet, int wetAfterDry, int dry) {
        if (wet < 1 || dry < 1)
            throw new IllegalArgumentException(
                    "%d wet and %d dry steps tell no chance; at least one of each does".formatted(wet, dry));
        return new WetDryChain((double) wetAfterWet / wet, (double) wetAfterDry / dry);
    }

    /** The chain with this share of wet steps, neighbours of which correlate by {@code rho}, 0 to 1. */
    public static WetDryChain persistent(double wet, double rho) {
        RainChance.checked(wet);
        RainChance.checked(rho);
        return new WetDryChain(wet + rho * (1 - wet), wet * (1 - rho));
    }

    public double wetAfter(boolean wet) {
        return wet ? wetAfterWet : wetAfterDry;
    }

    /** How neighbouring steps correlate; below 0 where wet and dry take turns. */
    public double correlation() {
        return wetAfterWet - wetAfterDry;
    }

    /** The share of wet steps in the long run; a chain that never leaves its state has none. */
    public double longRunWet() {
        double leaving = 1 - correlation();
        if (leaving <= 0)
            throw new IllegalStateException("wet stays wet and dry stays dry: the first step settles the long run");
        return wetAfterDry / leaving;
    }

    /** The mean length of a wet spell in steps; infinite where wet stays wet. */
    public double meanWetSpell() {
        return 1 / (1 - wetAfterWet);
    }

    /** The mean length of a dry spell in steps; infinite where dry stays dry. */
    public double meanDrySpell() {
        return 1 / wetAfterDry;
    }

    /** The mean length of a wet spell and the dry one after it. */
    public double meanCycle() {
        return meanWetSpell() + meanDrySpell();
    }

    /** The chance that the step so many steps after one known to be wet or dry is wet. */
    public double wetLater(int steps, boolean wetNow) {
        notNegative(steps);
        double chance = wetNow ? 1 : 0;
        for (int step = 0; step < steps; step++) chance = chance * wetAfterWet + (1 - chance) * wetAfterDry;
        return chance;
    }

    /** The chance that at least one of the next steps is wet, when the one before them is known to be wet or dry. */
    public double anyWet(int steps, boolean wetBefore) {
        notNegative(steps);
        return steps == 0 ? 0 : 1 - (1 - wetAfter(wetBefore)) * Math.pow(1 - wetAfterDry, steps - 1);
    }

    /** The same when nothing is known of the step before. */
    public double anyWet(int steps) {
        notNegative(steps);
        return steps == 0 ? 0 : 1 - (1 - longRunWet()) * Math.pow(1 - wetAfterDry, steps - 1);
    }

    private static void notNegative(int steps) {
        if (steps < 0) throw new IllegalArgumentException("%d steps lie in the past".formatted(steps));
    }
}
