package drylap.planning.solver;

import org.jspecify.annotations.Nullable;

/** What each unit was told when it was last placed, and where that left its crew: told the same, it need not be placed again. */
final class UnitMemo {
    private static final int NONE = -1;

    private final Journal journal;
    private final int[] crew;
    private final int[] wait;
    private final int[] dayIn;
    private final int[] clockIn;
    private final int[] beforeIn;
    private final int[] dayOut;
    private final int[] clockOut;
    private final int[] beforeOut;
    private final int[] earliest;
    private final int[] latestEnd;

    UnitMemo(int units, int tasks, Journal journal) {
        this.journal = journal;
        crew = new int[units];
        wait = new int[units];
        dayIn = new int[units];
        clockIn = new int[units];
        beforeIn = new int[units];
        dayOut = new int[units];
        clockOut = new int[units];
        beforeOut = new int[units];
        earliest = new int[tasks];
        latestEnd = new int[tasks];
        java.util.Arrays.fill(crew, NONE);
    }

    boolean sameStart(Unit unit, CrewState state, int notBefore) {
        int i = unit.index;
        return crew[i] == state.crew.index
                && beforeIn[i] == index(state.before)
                && dayIn[i] == state.day
                && clockIn[i] == state.clock
                && wait[i] == notBefore;
    }

    /** Notes what the task waits for and must end by; says whether that is what was noted before. */
    boolean sameLimits(WorkTask task, int from, int until) {
        int i = task.index;
        boolean same = earliest[i] == from && latestEnd[i] == until;
        journal.set(earliest, i, from);
        journal.set(latestEnd, i, until);
        return same;
    }

    int earliest(WorkTask task) {
        return earliest[task.index];
    }

    int latestEnd(WorkTask task) {
        return latestEnd[task.index];
    }

    /** @return whether it was with another crew before */
    boolean noteStart(Unit unit, CrewState state, int notBefore) {
        int i = unit.index;
        boolean otherCrew = crew[i] != state.crew.index;
        journal.set(crew, i, state.crew.index);
        journal.set(beforeIn, i, index(state.before));
        journal.set(dayIn, i, state.day);
        journal.set(clockIn, i, state.clock);
        journal.set(wait, i, notBefore);
        return otherCrew;
    }

    /** @return whether it left its crew otherwise before */
    boolean noteEnd(Unit unit, CrewState state) {
        int i = unit.index;
        int before = index(state.before);
        if (dayOut[i] == state.day && clockOut[i] == state.clock && beforeOut[i] == before) return false;
        journal.set(dayOut, i, state.day);
        journal.set(clockOut, i, state.clock);
        journal.set(beforeOut, i, before);
        return true;
    }

    /** The minute at which the unit last left its crew. */
    int clockAfter(Unit unit) {
        return clockOut[unit.index];
    }

    void recall(Unit unit, CrewState state, Problem problem) {
        int before = beforeOut[unit.index];
        state.day = dayOut[unit.index];
        state.clock = clockOut[unit.index];
        state.before = before == NONE ? null : problem.tasks().get(before);
    }

    void forget(Unit unit) {
        journal.set(crew, unit.index, NONE);
    }

    private static int index(@Nullable WorkTask task) {
        return task == null ? NONE : task.index;
    }
}
