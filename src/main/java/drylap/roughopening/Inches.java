package drylap.roughopening;

import drylap.speech.Saying;
import java.util.Locale;

/** Lengths for people at the wall: millimetres, and inches to the nearest sixteenth. */
final class Inches {
    private static final double MM_IN_AN_INCH = 25.4;
    private static final int SIXTEENTHS = 16;

    private Inches() {}

    /** Such as {@code 3.2 mm (1/8 in)}. */
    static Saying words(double millimetres) {
        long sixteenths = Math.round(millimetres / MM_IN_AN_INCH * SIXTEENTHS);
        return Saying.of("{0} mm ({1} in)", String.format(Locale.ROOT, "%.1f", millimetres), inches(sixteenths));
    }

    private static String inches(long sixteenths) {
        long whole = sixteenths / SIXTEENTHS;
        long part = sixteenths % SIXTEENTHS;
        if (part == 0) return String.valueOf(whole);
        long shared = Long.lowestOneBit(part);
        String fraction = part / shared + "/" + SIXTEENTHS / shared;
        return whole == 0 ? fraction : whole + " " + fraction;
    }
}
