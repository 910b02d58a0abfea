package drylap.planning.solver;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.NullUnmarked;
import org.optaplanner.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;
import org.optaplanner.core.api.score.calculator.IncrementalScoreCalculator;

/**
 * The fast path of the score: decodes only what a move touched, and when a move is taken back, takes the decoding back instead
 * of doing it again. Tests hold it equal to the constraint streams.
 */
@NullUnmarked
public class FastScore implements IncrementalScoreCalculator<CrewLists, HardMediumSoftLongScore> {
    private CrewLists lists;
    private Schedule schedule;
    /** The routes that the last decoding found changed, as they were before it. */
    private List<RouteCopy> before = List.of();
    /** The routes that changed since the last decoding, as it found them. */
    private List<RouteCopy> since = new ArrayList<>();

    @Override
    public void resetWorkingSolution(CrewLists workingSolution) {
        lists = workingSolution;
        schedule = new Schedule(lists.problem());
        schedule.bind(lists.getRoutes(), lists.notBefore);
        lists.working = schedule;
        lists.positions = new Positions(lists.getRoutes(), lists.getUnits().size());
        before = List.of();
        since = new ArrayList<>();
    }

    @Override
    public void beforeListVariableChanged(Object entity, String variableName, int fromIndex, int toIndex) {
        Route route = (Route) entity;
        for (RouteCopy copy : since) if (copy.route() == route) return;
        since.add(RouteCopy.of(route, lists.notBefore));
    }

    @Override
    public void afterListVariableChanged(Object entity, String variableName, int fromIndex, int toIndex) {
        Route route = (Route) entity;
        lists.positions.refresh(route, fromIndex, toIndex);
        if (!isIn(since, route)) return; // the other half of a move that the first half has already taken back
        schedule.listChanged(route.crew());
        if (takenBack()) {
            schedule.rollBack();
            before = List.of();
            since = new ArrayList<>();
        }
    }

    /** Whether all lists are again what they were before the last decoding. */
    private boolean takenBack() {
        if (before.isEmpty()) return false;
        for (RouteCopy copy : before) if (!copy.matches(lists.notBefore)) return false;
        for (RouteCopy copy : since) if (!isIn(before, copy.route()) && !copy.matches(lists.notBefore)) return false;
        return true;
    }

    private static boolean isIn(List<RouteCopy> copies, Route route) {
        for (RouteCopy copy : copies) if (copy.route() == route) return true;
        return false;
    }

    @Override
    public HardMediumSoftLongScore calculateScore() {
        if (schedule.listsChanged()) {
            schedule.settle();
            before = since;
            since = new ArrayList<>();
        }
        lists.meter.count();
        return CrewLists.scoreOf(schedule.tally);
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
