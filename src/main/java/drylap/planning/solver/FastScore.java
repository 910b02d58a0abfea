package drylap.planning.solver;

import org.jspecify.annotations.NullUnmarked;
import org.optaplanner.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;
import org.optaplanner.core.api.score.calculator.IncrementalScoreCalculator;

/**
 * The fast path of the score: decodes only what a move touched, and when a move is taken back, takes the decoding back instead
 * of doing it again. Tests hold it equal to the constraint streams.
 */
@NullUnmarked
public class FastScore implements IncrementalScoreCalculator<CrewLists, HardMediumSoftLongScore> {
    /** What was not reckoned to its end is taken by nobody. */
    private static final HardMediumSoftLongScore LEFT_OFF = HardMediumSoftLongScore.ofHard(-1);

    private CrewLists lists;
    private Schedule schedule;
    private boolean hurried;

    /** Whether a plan is not reckoned to its end that leaves out more than the one before; set by the search's configuration. */
    public void setHurried(boolean hurried) {
        this.hurried = hurried;
    }

    @Override
    public void resetWorkingSolution(CrewLists workingSolution) {
        lists = workingSolution;
        schedule = new Schedule(lists.problem());
        schedule.bind(lists.getRoutes(), lists.notBefore);
        lists.working = schedule;
        lists.unobserved = hurried;
    }

    @Override
    public void beforeListVariableChanged(Object entity, String variableName, int fromIndex, int toIndex) {}

    @Override
    public void afterListVariableChanged(Object entity, String variableName, int fromIndex, int toIndex) {
        lists.listChanged((Route) entity, fromIndex, toIndex);
    }

    @Override
    public HardMediumSoftLongScore calculateScore() {
        boolean whole = !schedule.listsChanged() || settle();
        lists.meter.count();
        return whole ? CrewLists.scoreOf(schedule.tally) : LEFT_OFF;
    }

    private boolean settle() {
        if (hurried) return schedule.settleUnlessDearer(schedule.tally.soft());
        schedule.settle();
        return true;
    }

    @Override
    public void beforeEntityAdded(Object entity) {}

    @Override
    public void afterEntityAdded(Object entity) {}

    @Override
    public void beforeVariableChanged(Object entity, String variableName) {}

    @Override
    public void afterVariableChanged(Object entity, String variableName) {}

    @Override
    public void beforeEntityRemoved(Object entity) {}

    @Override
    public void afterEntityRemoved(Object entity) {}
}
