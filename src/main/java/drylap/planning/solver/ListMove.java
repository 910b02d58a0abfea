package drylap.planning.solver;

import org.optaplanner.core.api.score.director.ScoreDirector;
import org.optaplanner.core.impl.heuristic.move.AbstractMove;

/**
 * A change of crew lists. The search takes most moves back right after it has scored them; the schedule then puts back what it
 * was, instead of decoding again.
 */
abstract class ListMove extends AbstractMove<CrewLists> {
    /** Is told which places of a route, which may be none, will change, and which have changed. */
    interface Announcer {
        void before(Route route, int from, int until);

        void after(Route route, int from, int until);
    }

    private boolean takesBack;

    /** The change itself, announced. */
    abstract void change(Announcer announcer, CrewLists lists);

    /** The change that puts the lists back, asked for before this one is made. */
    abstract ListMove opposite(CrewLists lists);

    /** Whether the lists would be the same after it, or not be allowed. */
    abstract boolean idle(CrewLists lists);

    /** Whether it is known to make crews wait for each other in a ring. */
    boolean closesRing(Rings rings) {
        return false;
    }

    @Override
    public final boolean isMoveDoable(ScoreDirector<CrewLists> director) {
        return !idle(director.getWorkingSolution());
    }

    @Override
    protected final ListMove createUndoMove(ScoreDirector<CrewLists> director) {
        ListMove undo = opposite(director.getWorkingSolution());
        undo.takesBack = true;
        return undo;
    }

    @Override
    protected final void doMoveOnGenuineVariables(ScoreDirector<CrewLists> director) {
        CrewLists lists = director.getWorkingSolution();
        Schedule schedule = lists.working;
        boolean scored = takesBack && schedule != null && !schedule.listsChanged();
        // a step is made without being scored again, so that what is taken back later must not reach back to it
        if (!takesBack && schedule != null && schedule.listsChanged()) schedule.settle();
        Announcer announcer = lists.unobserved ? lists.toSchedule : toDirector(director);
        if (scored) lists.takeBack(this, announcer);
        else change(announcer, lists);
    }

    private static Announcer toDirector(ScoreDirector<CrewLists> director) {
        return new Announcer() {
            @Override
            public void before(Route route, int from, int until) {
                director.beforeListVariableChanged(route, Route.UNITS, from, until);
            }

            @Override
            public void after(Route route, int from, int until) {
                director.afterListVariableChanged(route, Route.UNITS, from, until);
            }
        };
    }
}
