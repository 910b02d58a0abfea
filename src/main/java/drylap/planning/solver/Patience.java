package drylap.planning.solver;

/** By how much a change may make a plan dearer while it is being decided, before the rest is not worth deciding. */
sealed interface Patience permits Endless, Relief {
    /** What a plan may cost after a trade, on the way to one that may cost so much. */
    long after(long limit);

    /** What it may cost while a trade is being decided. */
    long within(long limit);

    /**
     * A step that was taken.
     *
     * @param dearer by how much it made the plan dearer; cheaper where that is negative
     * @param relief how much dearer the plan was on the way than at the end
     */
    void note(long dearer, long relief);
}
