package drylap.planning.solver;

import drylap.kernel.Task;
import java.util.Arrays;

/**
 * Puts units where their crews' states let them, and keeps what follows from it: starts, ends of courses, costs. A unit that is
 * told the same as last time is not placed again (see {@link UnitMemo}).
 */
final class Placer {
    private static final int KINDS = Task.values().length;

    private final Problem problem;
    private final Finder finder;
    private final Journal journal;
    private final Tally tally;
    private final Readiness readiness;
    private final RoadCount road;
    private final boolean[][] courseChanged;
    /** By number. */
    private final CourseWork[] courses;
    /** Numbers of courses, a stack. */
    private final int[] changedCourses;

    private int changed;
    private int mostOut = Integer.MAX_VALUE;
    private long dearest = Long.MAX_VALUE;
    /** What the plan cost at most after a unit was placed, since what follows began. */
    long peak = Long.MIN_VALUE;

    final UnitMemo memo;
    final CourseEnds ends;
    /** By task: start in minutes (NEVER: unplanned), crew and the crew's day. */
    final int[] start;

    final int[] crew;
    final int[] day;
    /** By kind, and of all at the end: tasks of units that have no start. */
    final int[] unplanned = new int[KINDS + 1];

    Placer(Schedule schedule, Journal journal) {
        this.journal = journal;
        problem = schedule.problem();
        start = schedule.start;
        crew = schedule.crew;
        day = schedule.day;
        ends = schedule.ends;
        readiness = schedule.readiness;
        tally = schedule.tally;
        finder = new Finder(problem.travel());
        road = new RoadCount(problem.travel());
        memo = new UnitMemo(problem.units().size(), problem.tasks().size(), journal);
        courseChanged = new boolean[KINDS][problem.courses().size()];
        courses = new CourseWork[problem.courses().size()];
        for (CourseWork course : problem.courses()) courses[course.index] = course;
        changedCourses = new int[KINDS * problem.courses().size()];
        for (Unit unit : problem.units())
            for (WorkTask task : unit.tasks) if (start[task.index] == TimeAxis.NEVER) unplanned[unit.kind.ordinal()]++;
        unplanned[KINDS] = Arrays.stream(unplanned).sum();
    }

    /** What follows is wanted whatever comes of it. */
    void begin() {
        mostOut = Integer.MAX_VALUE;
        peak = Long.MIN_VALUE;
    }

    /**
     * What follows is not wanted once a task has lost its place or the plan has become too dear.
     *
     * @param dearest what the plan may cost on the way
     */
    void beginUnlessOver(long dearest) {
        mostOut = out();
        this.dearest = dearest;
        peak = Long.MIN_VALUE;
    }

    /** Whether more is out than at the beginning or the plan costs too much, and that matters. */
    boolean hopeless() {
        return mostOut != Integer.MAX_VALUE && (tally.soft() > dearest || out() > mostOut);
    }

    private int out() {
        return unplanned[KINDS];
    }

    /** Forgets which courses are still to be looked at. */
    void abandon() {
        while (changed > 0) {
            int course = changedCourses[--changed];
            for (boolean[] of : courseChanged) of[course] = false;
        }
    }

    /**
     * Decides on a unit as the next of a crew, and brings the crew's state past it.
     *
     * @return whether the unit leaves its crew otherwise than it last left one
     */
    boolean decide(CrewState state, Unit unit, int wait) {
        boolean same = memo.sameStart(unit, state, wait);
        boolean ofCourse = unit.kind.compareTo(Task.WRAP) >= 0;
        int ready = ofCourse ? readiness.earliest(unit.tasks[0]) : 0;
        for (WorkTask task : unit.tasks)
            same &= memo.sameLimits(task, ofCourse ? ready : readiness.earliest(task), readiness.latestEnd(task));
        if (!same) return place(state, unit, wait);
        memo.recall(unit, state, problem);
        return false;
    }

    private boolean place(CrewState state, Unit unit, int wait) {
        boolean otherCrew = memo.noteStart(unit, state, wait);
        road.clear();
        for (WorkTask task : unit.tasks) placeOne(state, task, wait);
        tally.roadChanged(unit, state.crew.pinned.length > 0 ? RoadCount.NOTHING : road);
        peak = Math.max(peak, tally.soft());
        return memo.noteEnd(unit, state) | otherCrew;
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
        road.add(state, task, finder.day);
        state.day = finder.day;
        state.clock = finder.start + task.minutes;
        state.before = task;
    }

    /** Leaves a unit out: its crew waits for others that wait for it. */
    void leaveOut(CrewState state, Unit unit) {
        memo.forget(unit);
        memo.noteEnd(unit, state);
        for (WorkTask task : unit.tasks) put(state, task, TimeAxis.NEVER, -1);
        tally.roadChanged(unit, RoadCount.NOTHING);
    }

    private void put(CrewState state, WorkTask task, int at, int onDay) {
        int i = task.index;
        int by = at == TimeAxis.NEVER ? -1 : state.crew.index;
        if (start[i] == at && crew[i] == by && day[i] == onDay) return;
        if (start[i] != at) moved(task, at);
        journal.set(start, i, at);
        journal.set(crew, i, by);
        journal.set(day, i, onDay);
        tally.taskChanged(task);
    }

    private void moved(WorkTask task, int at) {
        int kind = task.kind.ordinal();
        int more = (at == TimeAxis.NEVER ? 1 : 0) - (start[task.index] == TimeAxis.NEVER ? 1 : 0);
        journal.set(unplanned, kind, unplanned[kind] + more);
        journal.set(unplanned, KINDS, unplanned[KINDS] + more);
        if (courseChanged[kind][task.course.index]) return;
        courseChanged[kind][task.course.index] = true;
        changedCourses[changed++] = task.course.index;
    }

    /** Brings the end of a course up to date, if any of its tasks moved; whether it has become another. */
    boolean endMoved(CourseWork course, Task kind) {
        if (!courseChanged[kind.ordinal()][course.index]) return false;
        int before = ends.through(course, kind);
        ends.recompute(course, kind, start);
        return ends.through(course, kind) != before;
    }

    /** The next course on which a task of the kind moved, its end and its cost brought up to date; null at the end. */
    @org.jspecify.annotations.Nullable
    CourseWork nextChanged(Task kind) {
        if (changed == 0) return null;
        CourseWork course = courses[changedCourses[--changed]];
        courseChanged[kind.ordinal()][course.index] = false;
        ends.recompute(course, kind, start);
        tally.courseChanged(course, kind);
        return course;
    }
}
