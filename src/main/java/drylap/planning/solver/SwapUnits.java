package drylap.planning.solver;

import org.optaplanner.core.api.score.director.ScoreDirector;
import org.optaplanner.core.impl.heuristic.move.AbstractMove;

/** Lets two units change places. */
final class SwapUnits extends AbstractMove<CrewLists> {
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
    protected SwapUnits createUndoMove(ScoreDirector<CrewLists> director) {
        return new SwapUnits(right, rightAt, left, leftAt);
    }

    @Override
    protected void doMoveOnGenuineVariables(ScoreDirector<CrewLists> director) {
        director.beforeListVariableChanged(left, Route.UNITS, leftAt, leftAt + 1);
        director.beforeListVariableChanged(right, Route.UNITS, rightAt, rightAt + 1);
        Unit unit = left.getUnits().get(leftAt);
        left.getUnits().set(leftAt, right.getUnits().get(rightAt));
        right.getUnits().set(rightAt, unit);
        director.afterListVariableChanged(left, Route.UNITS, leftAt, leftAt + 1);
        director.afterListVariableChanged(right, Route.UNITS, rightAt, rightAt + 1);
    }

    @Override
    public boolean isMoveDoable(ScoreDirector<CrewLists> director) {
        return left != right || leftAt != rightAt;
    }

    @Override
    public String toString() {
        return "swap %s[%d] and %s[%d]".formatted(left, leftAt, right, rightAt);
    }
}
