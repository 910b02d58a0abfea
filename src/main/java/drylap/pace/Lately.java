package drylap.pace;

import drylap.speech.Saying;

/**
 * Install minutes as planned and as observed, of openings like these.
 *
 * @param planned by the labour table in force, on average over the openings
 * @param minutes the middle of what they take, drawn to the imported labour table where little was observed
 * @param within half of the range in which that middle lies with a chance of 95 %
 */
public record Lately(double planned, double minutes, double within, int openings) {
    /** The plan lies outside that range. */
    boolean differs() {
        return Math.abs(minutes - planned) > within;
    }

    /** As it is said: planned 90, lately 104 ± 6 (17 openings). */
    public Saying saying() {
        return Saying.of(
                "planned {0}, lately {1} ± {2} ({3, plural, one {# opening} other {# openings}})",
                Math.round(planned), Math.round(minutes), (long) Math.ceil(within), openings);
    }
}
