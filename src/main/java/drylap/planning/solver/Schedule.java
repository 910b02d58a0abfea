package drylap.planning.solver;

import drylap.kernel.Task;
import java.util.Arrays;
import java.util.List;

/**
 * The decoder: turns crew lists into a schedule that is legal whatever the lists say. Each crew's list is walked and each task
 * put at its first legal start; a task without one stays unplanned and the crew's clock stands. Trades depend one way, so they
 * are decoded in order of the tasks. The answer depends on the lists alone: after a change only what it reaches is decoded
 * ({@link Ripple}), unless crews wait for each other in a ring; then the trade is decoded anew ({@link Sweep}).
 */
final class Schedule {
    private static final Task[] KINDS = Task.values();

    private final Problem problem;
    private final CrewState[] states;
    private final Journal journal = new Journal();
    private final Placer placer;
    private final Ripple ripple;
    private final Sweep sweep;
    private final Patience patience;
    /** By kind: 1 while crews wait for each other in a ring. */
    private final int[] ringed = new int[KINDS.length];

    private boolean fresh;
    private int[] notBefore = new int[0];

    /** By task: start in minutes (NEVER: unplanned), crew and the crew's day. */
    final int[] start;

    final int[] crew;
    final int[] day;
    final CourseEnds ends;
    final Readiness readiness;
    final Tally tally;
    final Positions positions;
    final Rings rings;
    final Laps laps;

    Schedule(Problem problem) {
        this(problem, Endless.ENDLESS);
    }

    Schedule(Problem problem, Patience patience) {
        this.problem = problem;
        this.patience = patience;
        states = problem.crews().stream().map(CrewState::new).toArray(CrewState[]::new);
        int tasks = problem.tasks().size();
        start = new int[tasks];
        crew = new int[tasks];
        day = new int[tasks];
        Arrays.fill(start, TimeAxis.NEVER);
        Arrays.fill(crew, -1);
        ends = new CourseEnds(problem.courses().size(), journal);
        readiness = new Readiness(problem, ends, start);
        tally = new Tally(problem, this, journal);
        positions = new Positions(problem.units().size());
        placePinned();
        for (CourseWork course : problem.courses()) for (Task kind : KINDS) ends.recompute(course, kind, start);
        tally.fresh();
        placer = new Placer(this, journal);
        laps = new Laps(problem);
        rings = new Rings(this, laps);
        ripple = new Ripple(problem, placer, positions, laps, states);
        sweep = new Sweep(problem, placer, states);
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
        ripple.bind(notBefore);
        for (Route route : routes) {
            states[route.crew().index].units = route.getUnits();
            positions.refresh(route, 0, route.getUnits().size());
        }
        fresh = true;
    }

    /** Units of a route from one place to another are others than before, or wait otherwise; so may the one after them. */
    void listChanged(Route route, int from, int until) {
        positions.refresh(route, from, until);
        ripple.listChanged(route.crew(), Task.of(route.crew().crew.trade()), from, until);
    }

    /** The crew's units as bound; live. */
    List<Unit> units(CrewCalendar crew) {
        return states[crew.index].units;
    }

    /** The first place of a route whose unit starts at the minute or later; its end where there is none. */
    int placeAt(Route route, int minute) {
        List<Unit> units = route.getUnits();
        int low = 0;
        int high = units.size();
        while (low < high) {
            int middle = (low + high) >>> 1;
            int leaves = placer.memo.clockAfter(units.get(middle));
            if (leaves <= minute) low = middle + 1;
            else high = middle;
        }
        return low;
    }

    /** Brings the schedule and its tally up to date with the lists, and keeps how it was before. */
    void settle() {
        begin();
        placer.begin();
        for (Task kind : KINDS) if (fresh || ripple.pending(kind)) pass(kind);
        fresh = false;
    }

    /** Settles after a step that a search has taken, and learns from it what else it may take. */
    void settleStep() {
        long before = tally.soft();
        settle();
        taken(before);
    }

    /** What was settled last is a step that a search takes, from a plan that cost so much. */
    void taken(long before) {
        patience.note(tally.soft() - before, placer.peak - tally.soft());
    }

    /**
     * As {@link #settle}, but leaves off when a task has lost its place, since many moves push something off the end and these
     * reach furthest, or when the plan is too dear and nothing is out that could be put in. All that is left to do is then to
     * {@link #rollBack}.
     *
     * @param limit what the plan may cost; on the way to it, more (see {@link Patience})
     * @return false where it left off
     */
    boolean settleUnlessDearer(long limit) {
        if (fresh) {
            settle();
            return true;
        }
        begin();
        boolean whole = tally.medium() == 0;
        long after = whole ? patience.after(limit) : Long.MAX_VALUE;
        placer.beginUnlessOver(whole ? patience.within(limit) : Long.MAX_VALUE);
        for (Task kind : KINDS) {
            if (ripple.pending(kind)) pass(kind);
            if (placer.hopeless() || tally.soft() > after && listsChanged()) {
                ripple.abandon();
                placer.abandon();
                return false;
            }
        }
        return true;
    }

    private void begin() {
        journal.start();
        tally.keepSums();
    }

    /** Takes the last {@link #settle} back; the lists must be again what they were before it. */
    void rollBack() {
        journal.undo();
        tally.restoreSums();
    }

    boolean listsChanged() {
        if (fresh) return true;
        for (Task kind : KINDS) if (ripple.pending(kind)) return true;
        return false;
    }

    private void pass(Task kind) {
        boolean rippled = !fresh && ringed[kind.ordinal()] == 0 && ripple.run(kind, () -> sweep.ring(kind));
        if (placer.hopeless()) return;
        if (rippled && !mayRing(kind)) tails(ripple.settled(kind));
        else decodeAll(kind);
        if (placer.hopeless()) return;
        for (CourseWork course = placer.nextChanged(kind); course != null; course = placer.nextChanged(kind))
            if (!fresh) ripple.courseMoved(course, kind);
    }

    /** A ring leaves somebody without a place, so where all have one there is none. */
    private boolean mayRing(Task kind) {
        return kind.compareTo(Task.WRAP) >= 0 && placer.unplanned[kind.ordinal()] > 0 && sweep.ring(kind);
    }

    private void decodeAll(Task kind) {
        ripple.forget(kind);
        journal.set(ringed, kind.ordinal(), sweep.run(kind, notBefore) ? 1 : 0);
        for (CrewCalendar one : problem.crews(kind)) tail(one);
    }

    private void tails(CrewCalendar[] crews) {
        for (CrewCalendar one : crews) tail(one);
    }

    private void tail(CrewCalendar one) {
        CrewState state = states[one.index];
        if (state.units.isEmpty()) state.restart();
        else placer.memo.recall(state.units.getLast(), state, problem);
        tally.crewChanged(state);
    }
}
