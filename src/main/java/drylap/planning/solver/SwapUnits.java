package drylap.planning.solver;

/** Lets two units change places, and, if so wished, the moments for which they wait. */
final class SwapUnits extends ListMove {
    private final Route left;
    private final int leftAt;
    private final Route right;
    private final int rightAt;
    private final boolean waitsToo;

    SwapUnits(Route left, int leftAt, Route right, int rightAt, boolean waitsToo) {
        this.left = left;
        this.leftAt = leftAt;
        this.right = right;
        this.rightAt = rightAt;
        this.waitsToo = waitsToo;
    }

    @Override
    SwapUnits opposite(CrewLists lists) {
        return new SwapUnits(right, rightAt, left, leftAt, waitsToo);
    }

    @Override
    void change(Announcer announcer, CrewLists lists) {
        announcer.before(left, leftAt, leftAt + 1);
        announcer.before(right, rightAt, rightAt + 1);
        Unit unit = left.getUnits().get(leftAt);
        Unit other = right.getUnits().get(rightAt);
        left.getUnits().set(leftAt, other);
        right.getUnits().set(rightAt, unit);
        if (waitsToo) swapWaits(unit, other, lists.notBefore);
        announcer.after(left, leftAt, leftAt + 1);
        announcer.after(right, rightAt, rightAt + 1);
    }

    private static void swapWaits(Unit one, Unit other, int[] notBefore) {
        int wait = notBefore[one.index];
        notBefore[one.index] = notBefore[other.index];
        notBefore[other.index] = wait;
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
