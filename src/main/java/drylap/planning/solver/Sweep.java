package drylap.planning.solver;

import drylap.kernel.Task;
import java.util.List;
import java.util.function.BiConsumer;

/**
 * Decodes all lists of a kind from their beginnings. Within wrap and siding a course waits for the one below it; should crews
 * wait for each other in a ring, the first of them leaves its unit out.
 */
final class Sweep {
    private final Problem problem;
    private final Placer placer;
    private final CrewState[] states;
    private final int[] pendingUnits;

    Sweep(Problem problem, Placer placer, CrewState[] states) {
        this.problem = problem;
        this.placer = placer;
        this.states = states;
        pendingUnits = new int[problem.courses().size()];
    }

    /** @return whether there was a ring */
    boolean run(Task kind, int[] notBefore) {
        List<CrewCalendar> crews = begin(kind);
        boolean ring = false;
        while (!through(crews, (state, unit) -> decide(state, unit, notBefore))) {
            ring = true;
            leaveOneOut(crews);
        }
        return ring;
    }

    /** Whether crews wait for each other in a ring, as their lists stand. */
    boolean ring(Task kind) {
        return !through(begin(kind), (state, unit) -> pendingUnits[unit.course.index]--);
    }

    private List<CrewCalendar> begin(Task kind) {
        List<CrewCalendar> crews = problem.crews(kind);
        for (CrewCalendar one : crews) states[one.index].restart();
        for (CourseWork course : problem.courses()) pendingUnits[course.index] = problem.unitsOf(course, kind);
        return crews;
    }

    /** Walks every list as far as it goes; true when all are at their end, false when the rest wait for each other. */
    private boolean through(List<CrewCalendar> crews, BiConsumer<CrewState, Unit> each) {
        boolean moved = true;
        while (moved) {
            moved = false;
            boolean finished = true;
            for (CrewCalendar one : crews) {
                moved |= walk(states[one.index], each);
                finished &= states[one.index].finished();
            }
            if (finished) return true;
        }
        return false;
    }

    private boolean walk(CrewState state, BiConsumer<CrewState, Unit> each) {
        boolean moved = false;
        while (!state.finished() && !waits(state.units.get(state.position))) {
            each.accept(state, state.units.get(state.position++));
            moved = true;
        }
        return moved;
    }

    private void decide(CrewState state, Unit unit, int[] notBefore) {
        placer.decide(state, unit, notBefore[unit.index]);
        decided(unit);
    }

    private boolean waits(Unit unit) {
        CourseWork below = problem.below(unit.course, unit.kind);
        return below != null && pendingUnits[below.index] > 0;
    }

    private void leaveOneOut(List<CrewCalendar> crews) {
        for (CrewCalendar one : crews) {
            CrewState state = states[one.index];
            if (state.finished()) continue;
            Unit unit = state.units.get(state.position++);
            placer.leaveOut(state, unit);
            decided(unit);
            return;
        }
    }

    private void decided(Unit unit) {
        if (--pendingUnits[unit.course.index] == 0) placer.endMoved(unit.course, unit.kind);
    }
}
