package drylap.planning.solver;

/**
 * By how much a change may make a plan dearer while it is being decided, before the rest is not worth deciding. A search takes next
 * to nothing that has been several times as much dearer on the way as what it took lately, whatever is saved later.
 */
final class Patience {
    /** Steps that it looks at before it says anything. */
    private static final int STEPS = 200;

    /** What the search took is forgotten by so much with each step, as it cools. */
    private static final double KEPT = 0.998;

    private static final int TIMES = 4;

    /** Within a trade what is saved later may be much, since half of a change is decided before the other. */
    private static final int TIMES_WITHIN = 20;

    private final boolean endless;
    private final boolean endlessWithin;
    private int steps;
    private double most;

    /**
     * @param endless where there is so little to decide that every change is looked at to its end
     * @param endlessWithin where every trade is
     */
    Patience(boolean endless, boolean endlessWithin) {
        this.endless = endless;
        this.endlessWithin = endless || endlessWithin;
    }

    /** A step that was taken made the plan dearer by this, or cheaper where it is negative. */
    void note(long dearer) {
        steps++;
        most = Math.max(dearer, most * KEPT);
    }

    /** What a plan that costs so much may cost after a trade on the way to another. */
    long dearest(long now) {
        return times(endless, TIMES, now);
    }

    /** What it may cost while a trade is being decided. */
    long dearestWithin(long now) {
        return times(endlessWithin, TIMES_WITHIN, now);
    }

    private long times(boolean endless, int times, long now) {
        return endless || steps <= STEPS ? Long.MAX_VALUE : now + (long) (times * most);
    }
}
