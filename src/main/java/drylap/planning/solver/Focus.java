package drylap.planning.solver;

import java.util.Arrays;
import java.util.BitSet;
import java.util.List;

/**
 * What a search may give other crews and days. Of a plan that people have already, that is what is no longer where it was
 * published, or is new; the rest stays with its crew, so that a change of weather moves what it touches.
 */
final class Focus {
    private final List<Unit> units;
    private final boolean everything;
    private final BitSet members = new BitSet();

    private Focus(List<Unit> units, boolean everything) {
        this.units = units;
        this.everything = everything;
        for (Unit unit : units) members.set(unit.index);
    }

    static Focus everything(List<Unit> units) {
        return new Focus(units, true);
    }

    /** Everything where nothing is elsewhere or most of it. */
    static Focus of(Decoded kept) {
        List<Unit> units = kept.lists().getUnits();
        List<Unit> elsewhere = units.stream()
                .filter(unit -> Arrays.stream(unit.tasks).anyMatch(task -> elsewhere(task, kept.schedule())))
                .toList();
        boolean most = elsewhere.size() * 2 > units.size();
        return most ? everything(units) : new Focus(elsewhere, elsewhere.isEmpty());
    }

    /** Nothing has changed. */
    boolean isEmpty() {
        return units.isEmpty();
    }

    boolean isEverything() {
        return everything;
    }

    boolean has(Unit unit) {
        return everything || members.get(unit.index);
    }

    /** Units to begin moves with; none where nothing has changed. */
    List<Unit> units() {
        return units;
    }

    private static boolean elsewhere(WorkTask task, Schedule schedule) {
        return !task.published()
                || schedule.start[task.index] != task.publishedStart
                || schedule.crew[task.index] != task.publishedCrew;
    }
}
