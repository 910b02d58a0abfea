package drylap.planning.solver;

import java.util.ArrayList;
import java.util.List;
import org.optaplanner.core.api.score.director.ScoreDirector;
import org.optaplanner.core.impl.heuristic.move.AbstractMove;

/** Takes a run of units out of one route and puts it, in order, into a route: another, or the same elsewhere. */
final class MoveRun extends AbstractMove<CrewLists> {
    private final Route from;
    private final int at;
    private final int length;
    private final Route to;
    /** The place in {@code to} after the run has been taken out. */
    private final int into;

    MoveRun(Route from, int at, int length, Route to, int into) {
        this.from = from;
        this.at = at;
        this.length = length;
        this.to = to;
        this.into = into;
    }

    @Override
    protected MoveRun createUndoMove(ScoreDirector<CrewLists> director) {
        return new MoveRun(to, into, length, from, at);
    }

    @Override
    protected void doMoveOnGenuineVariables(ScoreDirector<CrewLists> director) {
        int first = from == to ? Math.min(at, into) : at;
        announce(director, from, first, true);
        if (from != to) announce(director, to, into, true);
        List<Unit> run = from.getUnits().subList(at, at + length);
        List<Unit> moved = new ArrayList<>(run);
        run.clear();
        to.getUnits().addAll(into, moved);
        announce(director, from, first, false);
        if (from != to) announce(director, to, into, false);
    }

    /** All that follows shifts, so the change reaches to the end of the list. */
    private static void announce(ScoreDirector<CrewLists> director, Route route, int first, boolean before) {
        int end = route.getUnits().size();
        if (before) director.beforeListVariableChanged(route, Route.UNITS, first, end);
        else director.afterListVariableChanged(route, Route.UNITS, first, end);
    }

    @Override
    public boolean isMoveDoable(ScoreDirector<CrewLists> director) {
        return from != to || at != into;
    }

    @Override
    public String toString() {
        return "move %d from %s[%d] to %s[%d]".formatted(length, from, at, to, into);
    }
}
