package drylap.planning.solver;

/** What going out, going on and setting up costs a crew over the tasks of one unit; the way back of a day goes to what follows it. */
final class RoadCount {
    static final RoadCount NOTHING = new RoadCount(new int[0][0]);

    private final int[][] between;
    int days;
    int travel;
    int setup;
    int overtime;

    RoadCount(int[][] minutesBetweenSites) {
        between = minutesBetweenSites;
    }

    void clear() {
        days = 0;
        travel = 0;
        setup = 0;
        overtime = 0;
    }

    /** One more task, on the given day of the crew, from the state that it finds the crew in. */
    void add(CrewState state, WorkTask task, int onDay) {
        WorkTask before = state.before;
        if (before != null && state.day == onDay) {
            travel += between[before.site][task.site];
            setup += task.setupAfter(before);
            return;
        }
        home(state);
        days++;
        travel += state.crew.toSite[task.site];
        setup += task.setupAfter(null);
    }

    /** The way back of the state's day, if anything was done on it. */
    void home(CrewState state) {
        WorkTask last = state.before;
        if (last == null) return;
        int back = state.crew.fromSite[last.site];
        travel += back;
        overtime += Math.max(0, state.clock + back - state.crew.end[state.day]);
    }
}
