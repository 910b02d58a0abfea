package drylap.planning.solver;

import java.util.ArrayList;
import java.util.List;
import org.optaplanner.core.api.score.director.ScoreDirector;

/** Takes a run of units out of one route and puts it, in order, into a route: another, or the same elsewhere. */
final class MoveRun extends ListMove {
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
    MoveRun opposite(CrewLists lists) {
        return new MoveRun(to, into, length, from, at);
    }

    @Override
    void change(ScoreDirector<CrewLists> director, CrewLists lists) {
        if (from == to) {
            changeWithin(director);
            return;
        }
        announce(director, from, at, at + length, true);
        announce(director, to, into, into, true);
        moveUnits();
        announce(director, from, at, at, false);
        announce(director, to, into, into + length, false);
    }

    /** Within a list all between the old place and the new one shifts. */
    private void changeWithin(ScoreDirector<CrewLists> director) {
        int first = Math.min(at, into);
        int end = Math.max(at, into) + length;
        announce(director, from, first, end, true);
        moveUnits();
        announce(director, from, first, end, false);
    }

    private void moveUnits() {
        List<Unit> run = from.getUnits().subList(at, at + length);
        List<Unit> moved = new ArrayList<>(run);
        run.clear();
        to.getUnits().addAll(into, moved);
    }

    @Override
    boolean idle(CrewLists lists) {
        return from == to && at == into;
    }

    @Override
    boolean closesRing(Rings rings) {
        return rings.closes(from, at, length, to, into);
    }

    @Override
    public String toString() {
        return "move %d from %s[%d] to %s[%d]".formatted(length, from, at, to, into);
    }
}
