package drylap.weather;

/** The chance that it rains at all in a row of hours, from each hour's own chance (0 to 1). */
public final class RainChance {
    private RainChance() {}

    /** As if no hour knew of the others; too high, because wet hours come together. */
    public static double independent(double... hourly) {
        double dry = 1;
        for (double chance : hourly) dry *= 1 - checked(chance);
        return 1 - dry;
    }

    /** A two-state Markov chain whose neighbouring hours correlate by {@code rho}, 0 to 1. */
    public static double persistent(double rho, double... hourly) {
        checked(rho);
        double dry = 1;
        for (int hour = 0; hour < hourly.length; hour++) {
            double chance = checked(hourly[hour]);
            dry *= hour == 0 ? 1 - chance : staysDry(rho, hourly[hour - 1], chance);
        }
        return 1 - dry;
    }

    /** The same chain where each of {@code hours} has one chance, in closed form. */
    public static double persistent(double rho, double hourly, int hours) {
        checked(rho);
        checked(hourly);
        return hours == 0 ? 0 : 1 - (1 - hourly) * Math.pow(1 - hourly * (1 - rho), hours - 1);
    }

    /**
     * At any point of an area: how sure it is that rain comes to the area, times the share of the area that gets it. The US
     * weather service's own reading of its probability of precipitation.
     */
    public static double atPoint(double confidence, double coverage) {
        return checked(confidence) * checked(coverage);
    }

    /** No model can give less (Fréchet): the likeliest hour alone. */
    public static double atLeast(double... hourly) {
        double most = 0;
        for (double chance : hourly) most = Math.max(most, checked(chance));
        return most;
    }

    /** No model can give more (Fréchet): hours that never come together. */
    public static double atMost(double... hourly) {
        double sum = 0;
        for (double chance : hourly) sum += checked(chance);
        return Math.min(1, sum);
    }

    /** The chance that an hour stays dry after a dry one; the share of both wet keeps to what the two chances allow. */
    static double staysDry(double rho, double before, double now) {
        if (before >= 1) return 0;
        return Math.clamp(1 - (now - bothWet(rho, before, now)) / (1 - before), 0, 1);
    }

    /** The chance that two neighbouring hours are both wet, as far as their own chances allow it (Fréchet). */
    public static double bothWet(double rho, double before, double now) {
        double wanted = before * now + rho * Math.sqrt(before * (1 - before) * now * (1 - now));
        return Math.min(Math.min(before, now), Math.max(wanted, Math.max(0, before + now - 1)));
    }

    static double checked(double chance) {
        if (!(chance >= 0 && chance <= 1))
            throw new IllegalArgumentException("a chance or correlation of %s is outside 0..1".formatted(chance));
        return chance;
    }
}
