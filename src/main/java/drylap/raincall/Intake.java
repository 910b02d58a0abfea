package drylap.raincall;

import java.util.stream.IntStream;

/**
 * The water that is expected in at an opening that stays open, minute by minute from now until the call's end. Whole
 * millionths of a litre, so that sums do not depend on their order.
 */
public final class Intake {
    private static final double MILLIONTHS = 1e6;

    private final long[] by;

    private Intake(long[] by) {
        this.by = by;
    }

    /** @param litres of each minute from now */
    public static Intake of(double[] litres) {
        long[] by = new long[litres.length + 1];
        for (int minute = 0; minute < litres.length; minute++) {
            if (!(litres[minute] >= 0))
                throw new IllegalArgumentException("water of %s litres in minute %d".formatted(litres[minute], minute));
            by[minute + 1] = by[minute] + Math.round(litres[minute] * MILLIONTHS);
        }
        return new Intake(by);
    }

    /** The same water in every minute from {@code rainFrom} on. */
    public static Intake steady(int rainFrom, int minutes, double litresAMinute) {
        return of(IntStream.range(0, minutes)
                .mapToDouble(minute -> minute < rainFrom ? 0 : litresAMinute)
                .toArray());
    }

    /** The same without what comes before that minute. */
    Intake dryBefore(int minute) {
        long[] dry = new long[by.length];
        for (int one = minute + 1; one < by.length; one++) dry[one] = by[one] - by[minute];
        return new Intake(dry);
    }

    static double litres(long millionths) {
        return millionths / MILLIONTHS;
    }

    int minutes() {
        return by.length - 1;
    }

    /** What comes in where the opening is shut from that minute on. */
    long by(int minute) {
        return by[minute];
    }

    long all() {
        return by[by.length - 1];
    }
}
