package drylap.planning.solver;

import java.util.ArrayList;
import java.util.List;

/** Lets two crews change what they do from some place of their lists on. */
final class SwapTails extends ListMove {
    private final Route left;
    private final int leftFrom;
    private final Route right;
    private final int rightFrom;

    SwapTails(Route left, int leftFrom, Route right, int rightFrom) {
        this.left = left;
        this.leftFrom = leftFrom;
        this.right = right;
        this.rightFrom = rightFrom;
    }

    @Override
    SwapTails opposite(CrewLists lists) {
        return new SwapTails(left, leftFrom, right, rightFrom);
    }

    @Override
    void change(Announcer announcer, CrewLists lists) {
        announcer.before(left, leftFrom, left.getUnits().size());
        announcer.before(right, rightFrom, right.getUnits().size());
        List<Unit> fromLeft = tail(left, leftFrom);
        List<Unit> fromRight = tail(right, rightFrom);
        List<Unit> moved = new ArrayList<>(fromLeft);
        fromLeft.clear();
        left.getUnits().addAll(fromRight);
        fromRight.clear();
        right.getUnits().addAll(moved);
        announcer.after(left, leftFrom, left.getUnits().size());
        announcer.after(right, rightFrom, right.getUnits().size());
    }

    private static List<Unit> tail(Route route, int from) {
        return route.getUnits().subList(from, route.getUnits().size());
    }

    @Override
    boolean idle(CrewLists lists) {
        return left == right || !fit(tail(left, leftFrom), right) || !fit(tail(right, rightFrom), left);
    }

    private static boolean fit(List<Unit> units, Route to) {
        for (Unit unit : units) if (!unit.fits(to.crew())) return false;
        return true;
    }

    @Override
    public String toString() {
        return "swap what follows %s[%d] and %s[%d]".formatted(left, leftFrom, right, rightFrom);
    }
}
