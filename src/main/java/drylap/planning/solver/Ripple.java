package drylap.planning.solver;

import drylap.kernel.Task;
import java.util.Arrays;
import java.util.function.BooleanSupplier;
import org.jspecify.annotations.Nullable;

/**
 * Decodes only what a change reaches: units that changed place, those that their crew now comes to at another time, and those
 * whose laps wait for another end. Whatever comes first in time is decided first, so that little is decided twice.
 */
final class Ripple {
    /** A unit that is decided this often in one change may stand in a ring of crews that wait for each other. */
    private static final int OFTEN = 8;

    private static final int TOO_OFTEN = 1000;

    private static final int NOWHERE = Integer.MAX_VALUE;

    private final Problem problem;
    private final Placer placer;
    private final Positions positions;
    private final Laps laps;
    private final CrewState[] states;
    private final boolean[] dirty;
    /** By unit: how often it was decided in the run whose number stands beside it. */
    private final int[] times;

    private final int[] timesInRun;
    private int runs;
    private int secondTime;
    /** By crew: no dirty unit of its list stands before or after these places. */
    private final int[] first;

    private final int[] last;
    private final CrewCalendar[][] active = new CrewCalendar[Task.values().length][];
    private final int[] activeCrews = new int[Task.values().length];
    private int[] notBefore = new int[0];

    Ripple(Problem problem, Placer placer, Positions positions, Laps laps, CrewState[] states) {
        this.problem = problem;
        this.placer = placer;
        this.positions = positions;
        this.states = states;
        this.laps = laps;
        dirty = new boolean[problem.units().size()];
        times = new int[dirty.length];
        timesInRun = new int[dirty.length];
        first = new int[states.length];
        last = new int[states.length];
        Arrays.fill(first, NOWHERE);
        Arrays.fill(last, -1);
        for (Task kind : Task.values())
            active[kind.ordinal()] = new CrewCalendar[problem.crews(kind).size()];
    }

    void bind(int[] notBefore) {
        this.notBefore = notBefore;
    }

    boolean pending(Task kind) {
        return activeCrews[kind.ordinal()] > 0;
    }

    /** Units from one place to another, and the one after them, may have to be decided anew. */
    void listChanged(CrewCalendar crew, Task kind, int from, int until) {
        boolean again = last[crew.index] >= 0;
        activate(crew, kind);
        var units = states[crew.index].units;
        for (int place = from; place <= until && place < units.size(); place++) dirty[units.get(place).index] = true;
        first[crew.index] = Math.min(first[crew.index], from);
        last[crew.index] = again ? NOWHERE : until; // what was marked before may have moved, anywhere
    }

    private void activate(CrewCalendar crew, Task kind) {
        if (last[crew.index] >= 0) return;
        active[kind.ordinal()][activeCrews[kind.ordinal()]++] = crew;
        last[crew.index] = 0;
    }

    private void mark(Unit unit) {
        dirty[unit.index] = true;
        CrewCalendar crew = positions.route(unit).crew();
        int place = positions.place(unit);
        activate(crew, unit.kind);
        first[crew.index] = Math.min(first[crew.index], place);
        last[crew.index] = Math.max(last[crew.index], place);
    }

    /** Everything of a kind that waits for this course, which other crews have left otherwise. */
    void courseMoved(CourseWork course, Task moved) {
        for (Task kind : Task.values())
            if (kind.compareTo(moved) > 0) for (Unit unit : laps.on(course, kind)) mark(unit);
    }

    /**
     * Decides until nothing changes.
     *
     * @param ringed asked whether crews wait for each other in a ring, when that seems so
     * @return false where they do
     */
    boolean run(Task kind, BooleanSupplier ringed) {
        runs++;
        int enough = OFTEN;
        for (CrewState state = earliest(kind); state != null; state = earliest(kind)) {
            do {
                int times = decide(state, kind);
                if (placer.hopeless()) return true;
                if (times <= enough) continue;
                if (enough == TOO_OFTEN || ringed.getAsBoolean()) return false;
                enough = TOO_OFTEN;
            } while (nextDirty(state) >= 0 && timeOf(state) <= secondTime);
        }
        return true;
    }

    /** The crew whose next dirty unit comes first in time; when the second comes is left in {@link #secondTime}. */
    private @Nullable CrewState earliest(Task kind) {
        CrewState best = null;
        int least = NOWHERE;
        secondTime = NOWHERE;
        CrewCalendar[] crews = active[kind.ordinal()];
        for (int i = 0; i < activeCrews[kind.ordinal()]; i++) {
            CrewState state = states[crews[i].index];
            if (first[state.crew.index] == NOWHERE || nextDirty(state) < 0) continue;
            int at = timeOf(state);
            if (at < least) {
                secondTime = least;
                least = at;
                best = state;
            } else secondTime = Math.min(secondTime, at);
        }
        return best;
    }

    /** When the crew comes to its next dirty unit. */
    private int timeOf(CrewState state) {
        int place = first[state.crew.index];
        return place == 0 ? -1 : placer.memo.clockAfter(state.units.get(place - 1));
    }

    private int nextDirty(CrewState state) {
        int crew = state.crew.index;
        int place = first[crew];
        int end = Math.min(last[crew], state.units.size() - 1);
        while (place <= end && !dirty[state.units.get(place).index]) place++;
        first[crew] = place <= end ? place : NOWHERE;
        return place <= end ? place : -1;
    }

    /** @return how often the unit was decided in this run */
    private int decide(CrewState state, Task kind) {
        int place = first[state.crew.index];
        Unit unit = state.units.get(place);
        dirty[unit.index] = false;
        if (place == 0) state.restart();
        else placer.memo.recall(state.units.get(place - 1), state, problem);
        boolean otherwise = placer.decide(state, unit, notBefore[unit.index]);
        if (otherwise && place + 1 < state.units.size()) mark(state.units.get(place + 1));
        if (kind.compareTo(Task.WRAP) >= 0 && placer.endMoved(unit.course, kind)) lapMoved(unit.course, kind);
        return count(unit);
    }

    private int count(Unit unit) {
        int i = unit.index;
        times[i] = timesInRun[i] == runs ? times[i] + 1 : 1;
        timesInRun[i] = runs;
        return times[i];
    }

    private void lapMoved(CourseWork course, Task kind) {
        CourseWork upper = laps.upper(course, kind);
        if (upper != null) for (Unit unit : laps.on(upper, kind)) mark(unit);
    }

    /** The crews whose lists or plans this run may have changed, and forgets them. */
    CrewCalendar[] settled(Task kind) {
        int k = kind.ordinal();
        CrewCalendar[] met = Arrays.copyOf(active[k], activeCrews[k]);
        for (CrewCalendar crew : met) {
            first[crew.index] = NOWHERE;
            last[crew.index] = -1;
        }
        activeCrews[k] = 0;
        return met;
    }

    /** Forgets all that is still to be decided. */
    void abandon() {
        for (Task kind : Task.values()) {
            for (int i = 0; i < activeCrews[kind.ordinal()]; i++) clean(states[active[kind.ordinal()][i].index]);
            settled(kind);
        }
    }

    private void clean(CrewState state) {
        int end = Math.min(last[state.crew.index], state.units.size() - 1);
        for (int place = first[state.crew.index]; place <= end; place++) dirty[state.units.get(place).index] = false;
    }

    void forget(Task kind) {
        for (Unit unit : problem.units(kind)) dirty[unit.index] = false;
        settled(kind);
    }
}
