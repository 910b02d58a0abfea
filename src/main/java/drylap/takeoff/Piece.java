package drylap.takeoff;

/**
 * What is cut from a roll in one: a strip, or a part of one that is longer than a roll.
 *
 * @param number counted from the left, or from below, beginning with 1
 * @param of how many pieces the strip is made of; 1 where it is whole
 * @param lengthMm with its laps, to a tenth of a millimetre
 * @param clear no joint of the strip comes near a corner of the window
 */
public record Piece(Strip strip, int number, int of, double lengthMm, boolean clear) {
    static Piece whole(Strip strip) {
        return new Piece(strip, 1, 1, strip.lengthMm(), true);
    }

    boolean joined() {
        return of > 1;
    }
}
