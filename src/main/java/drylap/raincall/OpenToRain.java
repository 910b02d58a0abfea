package drylap.raincall;

import drylap.kernel.OpeningId;

/**
 * An opening that stands open.
 *
 * @param closeMin minutes to finish what remains of its install block
 * @param closeBy the minute by which that must have ended, since nothing bonds in rain; 0 or less: it cannot be closed
 * @param coverMin minutes to put a temporary cover over it
 * @param coverLetsIn thousandths of the rain that still get in behind the cover
 */
public record OpenToRain(OpeningId opening, int closeMin, int closeBy, int coverMin, int coverLetsIn, Intake intake) {
    public OpenToRain {
        if (closeMin < 0 || coverMin < 0)
            throw new IllegalArgumentException(
                    "opening %s: %d minutes to close, %d to cover".formatted(opening, closeMin, coverMin));
        if (coverLetsIn < 0 || coverLetsIn > 1000)
            throw new IllegalArgumentException(
                    "opening %s: a cover lets in 0 to 1000 thousandths, not %d".formatted(opening, coverLetsIn));
    }

    int minutes(Act act) {
        return act == Act.CLOSE ? closeMin : coverMin;
    }

    /** Whether the act still helps when it ends then. */
    boolean works(Act act, int until) {
        return until <= intake.minutes() && (act == Act.COVER || until <= closeBy);
    }

    /** Grows with the time, which is what lets an earlier way stand for a later one. */
    long water(Act act, int until) {
        long before = intake.by(until);
        return act == Act.CLOSE ? before : before + (intake.all() - before) * coverLetsIn / 1000;
    }
}
