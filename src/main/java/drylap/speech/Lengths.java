package drylap.speech;

import drylap.kernel.Ruler;

/** Lengths as a tape measure has them. */
final class Lengths {
    private static final double MM_PER_INCH = 25.4;
    private static final int PARTS = 16;

    private Lengths() {}

    /** Whole millimetres, or inches to the nearest sixteenth, without the unit. */
    static String number(double millimetres, Ruler ruler) {
        return switch (ruler) {
            case MILLIMETRES -> String.valueOf(Math.round(millimetres));
            case INCHES -> inches(Math.round(millimetres / MM_PER_INCH * PARTS));
        };
    }

    /** Such as "35 7/16", the fraction in its lowest terms. */
    private static String inches(long sixteenths) {
        long whole = sixteenths / PARTS;
        long rest = sixteenths % PARTS;
        if (rest == 0) return String.valueOf(whole);
        long by = Long.lowestOneBit(rest);
        String fraction = "%d/%d".formatted(rest / by, PARTS / by);
        return whole == 0 ? fraction : "%d %s".formatted(whole, fraction);
    }
}
