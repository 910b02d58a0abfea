package drylap.planning.solver;

/**
 * For a search that knows beforehand what a plan may cost. Later trades give back nothing of what an earlier one has become dearer, or nearly
 * never. Within a trade much may be given back, as a day that a crew goes out for is counted before the day that it saves: as much
 * as was given back by what was taken lately.
 */
final class Relief implements Patience {
    /** Steps that it looks at before it says anything. */
    private static final int STEPS = 200;

    /** Is forgotten by so much with each step that changes the cost. */
    private static final double KEPT = 0.999;

    private int steps;
    private double most;

    @Override
    public long after(long limit) {
        return steps <= STEPS ? Long.MAX_VALUE : limit;
    }

    @Override
    public long within(long limit) {
        return steps <= STEPS ? Long.MAX_VALUE : limit + (long) most;
    }

    @Override
    public void note(long dearer, long relief) {
        steps++;
        if (dearer != 0) most = Math.max(relief, most * KEPT);
    }
}
