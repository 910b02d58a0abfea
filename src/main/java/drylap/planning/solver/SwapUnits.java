package drylap.planning.solver;

/** Lets two units change places. */
final class SwapUnits extends ListMove {
    private final Route left;
    private final int leftAt;
    private final Route right;
    private final int rightAt;

    SwapUnits(Route left, int leftAt, Route right, int rightAt) {
        this.left = left;
        this.leftAt = leftAt;
        this.right = right;
        this.rightAt = rightAt;
    }

    @Override
    SwapUnits opposite(CrewLists lists) {
        return new SwapUnits(right, rightAt, left, leftAt);
    }

    @Override
    void change(Announcer announcer, CrewLists lists) {
        announcer.before(left, leftAt, leftAt + 1);
        announcer.before(right, rightAt, rightAt + 1);
        Unit unit = left.getUnits().get(leftAt);
        left.getUnits().set(leftAt, right.getUnits().get(rightAt));
        right.getUnits().set(rightAt, unit);
        announcer.after(left, leftAt, leftAt + 1);
        announcer.after(right, rightAt, rightAt + 1);
    }

    @Override
    boolean idle(CrewLists lists) {
        return left == right && leftAt == rightAt;
    }

    @Override
    boolean closesRing(Rings rings) {
        return rings.closes(left, leftAt, 1, right, rightAt) || rings.closes(right, rightAt, 1, left, leftAt);
    }

    @Override
    public String toString() {
        return "swap %s[%d] and %s[%d]".formatted(left, leftAt, right, rightAt);
    }
}
