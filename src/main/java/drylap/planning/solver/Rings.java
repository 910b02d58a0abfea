package drylap.planning.solver;

import drylap.kernel.Task;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Tells, before it is done, whether units put at another place would make crews wait for each other in a ring: a unit waits for
 * the one before it on its list and for the course below. As long as all goes well whatever waits starts later, so the search
 * for a way round looks no further than the time of its goal.
 */
final class Rings {
    /** A way that is not found soon is taken for one. */
    private static final int FAR = 200;

    private final Schedule schedule;
    private final Laps laps;
    private final int[] seenIn;
    private final int[] goalOf;
    private final Unit[] stack;
    private int search;

    Rings(Schedule schedule, Laps laps) {
        this.schedule = schedule;
        this.laps = laps;
        seenIn = new int[schedule.problem().units().size()];
        goalOf = new int[seenIn.length];
        stack = new Unit[FAR * 4];
    }

    /**
     * Whether a run of units of one route closes a ring at a place of a route, its own included.
     *
     * @param into the place after the run has been taken out
     */
    boolean closes(Route from, int at, int length, Route to, int into) {
        List<Unit> run = from.getUnits().subList(at, at + length);
        if (run.getFirst().kind.compareTo(Task.WRAP) < 0) return false;
        Unit before = unitAt(from, at, length, to, into - 1);
        Unit after = unitAt(from, at, length, to, into);
        return waitsForWhatFollows(run, after) || isWaitedForBefore(run, before);
    }

    private static @Nullable Unit unitAt(Route from, int at, int length, Route to, int place) {
        int real = from == to && place >= at ? place + length : place;
        return real < 0 || real >= to.getUnits().size() ? null : to.getUnits().get(real);
    }

    /** Whether something that comes after the run is what the run waits for. */
    private boolean waitsForWhatFollows(List<Unit> run, @Nullable Unit after) {
        if (after == null) return false;
        search++;
        int until = -1;
        for (Unit unit : run) {
            CourseWork below = schedule.problem().below(unit.course, unit.kind);
            if (below == null) continue;
            for (Unit lower : laps.on(below, unit.kind)) {
                goalOf[lower.index] = search;
                until = Math.max(until, startOf(lower));
            }
        }
        return until >= 0 && reaches(run, after, until);
    }

    /** Whether what waits for the run comes before it. */
    private boolean isWaitedForBefore(List<Unit> run, @Nullable Unit before) {
        if (before == null) return false;
        for (Unit unit : run) {
            CourseWork upper = laps.upper(unit.course, unit.kind);
            if (upper == null) continue;
            for (Unit waiting : laps.on(upper, unit.kind)) {
                search++;
                goalOf[before.index] = search;
                if (reaches(run, waiting, startOf(before))) return true;
            }
        }
        return false;
    }

    private int startOf(Unit unit) {
        return schedule.start[unit.tasks[0].index];
    }

    /** Whether a goal comes after a unit, on lists without the run. */
    private boolean reaches(List<Unit> run, Unit first, int until) {
        int left = FAR;
        int top = push(first, 0, until);
        while (top > 0) {
            Unit unit = stack[--top];
            if (goalOf[unit.index] == search) return true;
            if (--left == 0) return true;
            Unit next = nextOf(run, unit);
            if (next != null) top = push(next, top, until);
            CourseWork upper = laps.upper(unit.course, unit.kind);
            if (upper == null) continue;
            for (Unit waiting : laps.on(upper, unit.kind)) {
                if (top + 2 >= stack.length) return true;
                top = push(waiting, top, until);
            }
        }
        return false;
    }

    private int push(Unit unit, int top, int until) {
        int start = startOf(unit);
        boolean tooLate = start > until && start != TimeAxis.NEVER;
        if (tooLate || seenIn[unit.index] == search) return top;
        seenIn[unit.index] = search;
        stack[top] = unit;
        return top + 1;
    }

    private @Nullable Unit nextOf(List<Unit> run, Unit unit) {
        List<Unit> list = schedule.positions.route(unit).getUnits();
        int place = schedule.positions.place(unit) + 1;
        while (place < list.size() && run.contains(list.get(place))) place++;
        return place < list.size() ? list.get(place) : null;
    }
}
