package drylap.planning.solver;

import org.optaplanner.core.api.score.director.ScoreDirector;
import org.optaplanner.core.impl.heuristic.move.AbstractMove;

/** Lets a unit wait until a moment, or wait no more. Announced as a change of its place in its route. */
final class Wait extends AbstractMove<CrewLists> {
    private final Route route;
    private final int at;
    private final int until;

    Wait(Route route, int at, int until) {
        this.route = route;
        this.at = at;
        this.until = until;
    }

    private int unit() {
        return route.getUnits().get(at).index;
    }

    @Override
    protected Wait createUndoMove(ScoreDirector<CrewLists> director) {
        return new Wait(route, at, director.getWorkingSolution().notBefore[unit()]);
    }

    @Override
    protected void doMoveOnGenuineVariables(ScoreDirector<CrewLists> director) {
        director.beforeListVariableChanged(route, Route.UNITS, at, at + 1);
        director.getWorkingSolution().notBefore[unit()] = until;
        director.afterListVariableChanged(route, Route.UNITS, at, at + 1);
    }

    @Override
    public boolean isMoveDoable(ScoreDirector<CrewLists> director) {
        return director.getWorkingSolution().notBefore[unit()] != until;
    }

    @Override
    public String toString() {
        return "let %s[%d] wait until minute %d".formatted(route, at, until);
    }
}
