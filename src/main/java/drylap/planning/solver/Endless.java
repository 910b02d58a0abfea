package drylap.planning.solver;

/** Everything is decided to its end. */
enum Endless implements Patience {
    ENDLESS;

    @Override
    public long after(long limit) {
        return Long.MAX_VALUE;
    }

    @Override
    public long within(long limit) {
        return Long.MAX_VALUE;
    }

    @Override
    public void note(long dearer, long relief) {}
}
