package drylap.planning.solver;

import drylap.kernel.Task;
import drylap.planning.UnplannedReason;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Map;

/**
 * Cuts each course's work into units that one crew does in a row: neighbours that the same crews may do. An install is a unit of
 * its own, since each has driest hours of its own; rain does not harm the rest, and larger grains are searched faster.
 */
final class UnitCutter {
    /** Up to this many tasks, every one is a unit of its own. */
    private static final int FINE = 60;

    private static final int MIDDLING = 400;

    private final List<CrewCalendar> crews;
    private final Map<WorkTask, UnplannedReason> never;
    private final int size;

    UnitCutter(List<CrewCalendar> crews, Map<WorkTask, UnplannedReason> never, int tasks) {
        this.crews = crews;
        this.never = never;
        size = tasks <= FINE ? 1 : tasks <= MIDDLING ? 2 : 4;
    }

    List<Unit> cut(List<CourseWork> courses) {
        List<Unit> units = new ArrayList<>();
        for (CourseWork course : courses) for (Task kind : Task.values()) cut(course.tasks(kind), units);
        return List.copyOf(units);
    }

    private void cut(List<WorkTask> tasks, List<Unit> units) {
        List<WorkTask> run = new ArrayList<>();
        BitSet able = new BitSet();
        for (WorkTask task : tasks) {
            BitSet mine = able(task);
            if (task.pinned) continue;
            if (mine.isEmpty()) {
                never.put(task, UnplannedReason.NO_CREW_TRAINED);
                continue;
            }
            if (!run.isEmpty() && (!mine.equals(able) || differs(run.getLast(), task))) share(run, able, units);
            able = mine;
            run.add(task);
        }
        share(run, able, units);
    }

    /** What is delivered or rained on apart is done apart. */
    private static boolean differs(WorkTask one, WorkTask other) {
        return one.earliest != other.earliest || one.coverBy != other.coverBy;
    }

    private void share(List<WorkTask> run, BitSet able, List<Unit> units) {
        int parts = !run.isEmpty() && run.getFirst().kind == Task.INSTALL ? run.size() : Math.ceilDiv(run.size(), size);
        for (int part = 0; part < parts; part++) {
            int from = part * run.size() / parts;
            int until = (part + 1) * run.size() / parts;
            units.add(new Unit(units.size(), run.subList(from, until), able));
        }
        run.clear();
    }

    private BitSet able(WorkTask task) {
        BitSet able = new BitSet();
        for (CrewCalendar crew : crews)
            if (crew.crew.trade() == task.kind.trade() && crew.crew.trainedFor(task.opening.method()))
                able.set(crew.index);
        return able;
    }
}
