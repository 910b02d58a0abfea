package drylap.pace;

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
    public String words() {
        return "planned %d, lately %d ± %d (%d opening%s)"
                .formatted(
                        Math.round(planned),
                        Math.round(minutes),
                        (long) Math.ceil(within),
                        openings,
                        openings == 1 ? "" : "s");
    }
}
