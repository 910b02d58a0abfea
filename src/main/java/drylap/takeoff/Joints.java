package drylap.takeoff;

import drylap.speech.Saying;
import drylap.speech.Unfit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Makes a strip that is longer than a roll of pieces that lap: as few as can be of those ways that keep each lap between the
 * corners of the window, and as far from them as it is wide. Where there is no such way, as few as can be.
 */
final class Joints {
    private static final double TENTHS = 10;

    private final long length;
    private final long roll;
    private final long lap;

    private Joints(Strip strip, double rollMm, double lapMm) {
        length = tenths(strip.lengthMm());
        roll = tenths(rollMm);
        lap = tenths(lapMm);
    }

    /** @throws IllegalArgumentException where a roll is no longer than a lap */
    static List<Piece> pieces(Strip strip, double rollMm, double lapMm) {
        Joints joints = new Joints(strip, rollMm, lapMm);
        if (joints.length <= joints.roll) return List.of(Piece.whole(strip));
        if (joints.roll <= joints.lap)
            throw new Unfit(
                    Saying.of("a roll of {0} mm; accepted: longer than the lap of {1} mm", one(rollMm), one(lapMm)));
        List<Long> clear = joints.lengths(
                tenths(strip.firstCornerMm()) + 2 * joints.lap, tenths(strip.lastCornerMm()) - joints.lap);
        return pieces(strip, clear.isEmpty() ? joints.lengths(0, joints.length) : clear, !clear.isEmpty());
    }

    private static String one(double millimetres) {
        return String.format(Locale.ROOT, "%.1f", millimetres);
    }

    private static List<Piece> pieces(Strip strip, List<Long> lengths, boolean clear) {
        List<Piece> pieces = new ArrayList<>();
        for (long length : lengths)
            pieces.add(new Piece(strip, pieces.size() + 1, lengths.size(), length / TENTHS, clear));
        return pieces;
    }

    /**
     * Each piece as long as it may be, which leaves least for the others. Nothing where the rest is still longer than a roll.
     *
     * @param from a piece that another is joined to ends there or farther on
     * @param until and there or before
     */
    private List<Long> lengths(long from, long until) {
        List<Long> lengths = new ArrayList<>();
        long start = 0;
        while (length - start > roll) {
            long end = Math.min(start + roll, until);
            if (end < from || end - lap <= start) return List.of();
            lengths.add(end - start);
            start = end - lap;
        }
        lengths.add(length - start);
        return lengths;
    }

    static long tenths(double millimetres) {
        return Math.round(millimetres * TENTHS);
    }
}
