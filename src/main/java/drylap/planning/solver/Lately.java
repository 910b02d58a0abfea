package drylap.planning.solver;

/**
 * Leaves off after a trade what has become several times as much dearer as what was taken lately: for a search that says only afterwards
 * what it would have taken, which is next to nothing that was so dear on the way, whatever is saved later.
 */
final class Lately implements Patience {
    /** Steps that it looks at before it says anything. */
    private static final int STEPS = 200;

    /** What the search took is forgotten by so much with each step, as it cools. */
    private static final double KEPT = 0.998;

    private static final int TIMES = 4;

    private int steps;
    private double most;

    @Override
    public long after(long limit) {
        return steps <= STEPS ? Long.MAX_VALUE : limit + (long) (TIMES * most);
    }

    @Override
    public long within(long limit) {
        return Long.MAX_VALUE;
    }

    @Override
    public void note(long dearer, long relief) {
        steps++;
        most = Math.max(dearer, most * KEPT);
    }
}
