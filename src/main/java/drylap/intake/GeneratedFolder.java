package drylap.intake;

import drylap.intake.generate.Season;
import drylap.planning.JobFolder;

/**
 * An invented job folder for trials and benchmarks. The same numbers give the same bytes. It promises work that fits: crews,
 * deliveries, cure times and shingle order leave room for every task within three weeks, through the rain that is
 * forecast for the first ten days. That is how it is made, not a proof; the planner has the last word.
 */
public final class GeneratedFolder {
    public static final int FEWEST_OPENINGS = 8;
    public static final int MOST_OPENINGS = 20_000;
    /** A site has at least one course of this many openings. */
    public static final int FEWEST_OPENINGS_A_SITE = 4;

    private static final int USUAL_OPENINGS_A_SITE = 30;

    private GeneratedFolder() {}

    /** @throws IllegalArgumentException where a number is outside its limits; the message states them */
    public static JobFolder of(int openings, int sites, long seed) {
        if (openings < FEWEST_OPENINGS || openings > MOST_OPENINGS)
            throw new IllegalArgumentException(
                    "%d openings: %d to %d are accepted".formatted(openings, FEWEST_OPENINGS, MOST_OPENINGS));
        int most = openings / FEWEST_OPENINGS_A_SITE;
        if (sites < 1 || sites > most)
            throw new IllegalArgumentException(
                    "%d sites: 1 to %d are accepted for %d openings".formatted(sites, most, openings));
        return Season.of(openings, sites, seed);
    }

    /** About 30 openings a site. */
    public static int usualSites(int openings) {
        return Math.max(1, Math.round((float) openings / USUAL_OPENINGS_A_SITE));
    }
}
