package drylap.takeoff;

import drylap.kernel.Coded;
import drylap.kernel.OpeningId;
import drylap.kernel.Rule;
import drylap.kernel.Rules;

/**
 * A strip that goes on at an opening.
 *
 * @param widthMm of the roll that it is cut from
 * @param lengthMm to a tenth of a millimetre, so that sums are the same in any order
 * @param firstCornerMm where along it, from the left or from below, the first corner of the rough opening lies
 * @param lastCornerMm and the last
 */
public record Strip(
        OpeningId opening, Kind kind, double widthMm, double lengthMm, double firstCornerMm, double lastCornerMm) {
    private static final double TENTHS = 10;

    public enum Kind implements Coded {
        APRON("apron", "apron strip", Rule.APRON_WIDTH_MM),
        PAN("pan", "sill pan", Rule.PAN_WIDTH_MM),
        JAMB("jamb", "jamb flashing", Rule.JAMB_FLASHING_MM),
        HEAD("head", "head flashing", Rule.HEAD_FLASHING_MM);

        private final String code;
        private final String words;
        private final Rule width;

        Kind(String code, String words, Rule width) {
            this.code = code;
            this.words = words;
            this.width = width;
        }

        @Override
        public String code() {
            return code;
        }

        /** The trade's words for it. */
        public String words() {
            return words;
        }

        /** How wide the strip is, in mm. */
        public double widthMm(Rules rules) {
            return rules.value(width);
        }
    }

    public Strip {
        lengthMm = tenth(lengthMm);
        firstCornerMm = tenth(firstCornerMm);
        lastCornerMm = tenth(lastCornerMm);
    }

    private static double tenth(double millimetres) {
        return Math.rint(millimetres * TENTHS) / TENTHS;
    }
}
