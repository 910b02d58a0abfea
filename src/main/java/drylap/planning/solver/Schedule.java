package drylap.planning.solver;

import drylap.kernel.Task;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.List;

/**
 * The decoder: turns crew lists into a schedule that is legal whatever the lists say. Each crew's list is walked and each task
 * put at its first legal start; a task without one stays unplanned and the crew's clock stands. Trades depend one way, so they
 * are decoded in order of the tasks. Within wrap and siding a course waits for the one below it; should crews wait for each
 * other in a ring, the first of them leaves its unit unplanned. The answer depends on the lists alone: what was decoded before
 * is only remembered (see {@link UnitMemo}).
 */
final class Schedule {
    private final Problem problem;
    private final Finder finder;
    private final CrewState[] states;
    private final UnitMemo memo;
    private final Journal journal = new Journal();
    private final int[] pendingUnits;
    private final boolean[] listChanged = new boolean[Task.values().length];
    private final boolean[] crewChanged;
    private final boolean[][] courseChanged;
    private final Deque<CourseWork> changedCourses = new ArrayDeque<>();
    private int[] notBefore = new int[0];

    /** By task: start in minutes (NEVER: unplanned), crew and the crew's day. */
    final int[] start;

    final int[] crew;
    final int[] day;
    final CourseEnds ends;
    final Readiness readiness;
    final Tally tally;

    Schedule(Problem problem) {
        this.problem = problem;
        finder = new Finder(problem.travel());
        states = problem.crews().stream().map(CrewState::new).toArray(CrewState[]::new);
        int tasks = problem.tasks().size();
        memo = new UnitMemo(problem.units().size(), tasks, journal);
        start = new int[tasks];
        crew = new int[tasks];
        day = new int[tasks];
        Arrays.fill(start, TimeAxis.NEVER);
        Arrays.fill(crew, -1);
        crewChanged = new boolean[states.length];
        pendingUnits = new int[problem.courses().size()];
        courseChanged = new boolean[Task.values().length][problem.courses().size()];
        ends = new CourseEnds(problem.courses().size(), journal);
        readiness = new Readiness(problem, ends, start);
        tally = new Tally(problem, this, journal);
        placePinned();
        for (CourseWork course : problem.courses()) for (Task kind : Task.values()) ends.recompute(course, kind, start);
        tally.fresh();
    }

    private void placePinned() {
        for (WorkTask task : problem.tasks()) {
            if (!task.pinned) continue;
            start[task.index] = task.pinnedStart;
            crew[task.index] = task.pinnedCrew;
            day[task.index] = task.pinnedDay;
        }
    }

    Problem problem() {
        return problem;
    }

    void bind(List<Route> routes, int[] notBefore) {
        this.notBefore = notBefore;
        for (Route route : routes) {
            states[route.crew().index].units = route.getUnits();
            listChanged(route.crew());
        }
    }

    void listChanged(CrewCalendar crew) {
        listChanged[Task.of(crew.crew.trade()).ordinal()] = true;
        crewChanged[crew.index] = true;
    }

    /** The crew's units as bound; live. */
    List<Unit> units(CrewCalendar crew) {
        return states[crew.index].units;
    }

    /** Brings the schedule and its tally up to date with the lists, and keeps how it was before. */
    void settle() {
        journal.start();
        tally.keepSums();
        boolean upstream = false;
        for (Task kind : Task.values()) {
            if (listChanged[kind.ordinal()] || upstream) upstream |= pass(kind);
            listChanged[kind.ordinal()] = false;
        }
    }

    /** Takes the last {@link #settle} back; the lists must be again what they were before it. */
    void rollBack() {
        journal.undo();
        tally.restoreSums();
        Arrays.fill(listChanged, false);
        Arrays.fill(crewChanged, false);
    }

    boolean listsChanged() {
        for (boolean changed : listChanged) if (changed) return true;
        return false;
    }

    private boolean pass(Task kind) {
        List<CrewCalendar> crews = toWalk(kind);
        for (CrewCalendar one : crews) states[one.index].restart();
        if (kind != Task.INSTALL)
            for (CourseWork course : problem.courses()) pendingUnits[course.index] = problem.unitsOf(course, kind);
        while (!sweep(crews)) breakRing(crews);
        for (CrewCalendar one : crews) if (states[one.index].changed) tally.crewChanged(states[one.index]);
        boolean any = !changedCourses.isEmpty();
        while (!changedCourses.isEmpty()) courseThrough(changedCourses.pop(), kind);
        return any;
    }

    /** Installs wait for nothing that lists decide, so a list that did not change decodes as before. */
    private List<CrewCalendar> toWalk(Task kind) {
        if (kind != Task.INSTALL) return problem.crews(kind);
        List<CrewCalendar> changed = new ArrayList<>(2);
        for (CrewCalendar one : problem.crews(kind)) if (crewChanged[one.index]) changed.add(one);
        for (CrewCalendar one : changed) crewChanged[one.index] = false;
        return changed;
    }

    /** Walks every list as far as it goes; true when all are at their end, false when the rest wait for each other. */
    private boolean sweep(List<CrewCalendar> crews) {
        boolean moved = true;
        while (moved) {
            moved = false;
            boolean finished = true;
            for (CrewCalendar one : crews) {
                CrewState state = states[one.index];
                while (!state.finished() && !waits(state.units.get(state.position))) {
                    decode(state, state.units.get(state.position++));
                    moved = true;
                }
                finished &= state.finished();
            }
            if (finished) return true;
        }
        return false;
    }

    private boolean waits(Unit unit) {
        CourseWork below = problem.below(unit.course, unit.kind);
        return below != null && pendingUnits[below.index] > 0;
    }

    private void breakRing(List<CrewCalendar> crews) {
        for (CrewCalendar one : crews) {
            CrewState state = states[one.index];
            if (state.finished()) continue;
            Unit unit = state.units.get(state.position++);
            memo.forget(unit);
            for (WorkTask task : unit.tasks) put(state, task, TimeAxis.NEVER, -1);
            decided(unit);
            return;
        }
    }

    private void decode(CrewState state, Unit unit) {
        boolean same = memo.sameStart(unit, state, notBefore[unit.index]);
        for (WorkTask task : unit.tasks)
            same &= memo.sameLimits(task, readiness.earliest(task), readiness.latestEnd(task));
        if (same) memo.recall(unit, state, problem);
        else place(state, unit);
        decided(unit);
    }

    private void place(CrewState state, Unit unit) {
        memo.noteStart(unit, state, notBefore[unit.index]);
        state.changed = true;
        for (WorkTask task : unit.tasks) placeOne(state, task, notBefore[unit.index]);
        memo.noteEnd(unit, state);
    }

    private void placeOne(CrewState state, WorkTask task, int wait) {
        int ready = memo.earliest(task);
        boolean found = ready != TimeAxis.NEVER
                && finder.find(
                        state.crew,
                        state.day,
                        state.clock,
                        state.before,
                        task,
                        Math.max(ready, wait),
                        memo.latestEnd(task));
        put(state, task, found ? finder.start : TimeAxis.NEVER, found ? finder.day : -1);
        if (!found) return;
        state.day = finder.day;
        state.clock = finder.start + task.minutes;
        state.before = task;
    }

    private void put(CrewState state, WorkTask task, int at, int onDay) {
        int i = task.index;
        int by = at == TimeAxis.NEVER ? -1 : state.crew.index;
        if (start[i] == at && crew[i] == by && day[i] == onDay) return;
        if (crew[i] >= 0 && crew[i] != by) states[crew[i]].changed = true;
        state.changed = true;
        boolean moved = start[i] != at;
        journal.set(start, i, at);
        journal.set(crew, i, by);
        journal.set(day, i, onDay);
        tally.taskChanged(task);
        if (moved) courseChanged(task.course, task.kind);
    }

    private void courseChanged(CourseWork course, Task kind) {
        if (courseChanged[kind.ordinal()][course.index]) return;
        courseChanged[kind.ordinal()][course.index] = true;
        changedCourses.push(course);
    }

    private void decided(Unit unit) {
        CourseWork course = unit.course;
        if (--pendingUnits[course.index] == 0 && courseChanged[unit.kind.ordinal()][course.index])
            ends.recompute(course, unit.kind, start);
    }

    private void courseThrough(CourseWork course, Task kind) {
        courseChanged[kind.ordinal()][course.index] = false;
        ends.recompute(course, kind, start);
        tally.courseChanged(course, kind);
    }
}
