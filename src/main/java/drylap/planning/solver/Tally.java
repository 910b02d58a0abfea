package drylap.planning.solver;

import drylap.kernel.Task;
import drylap.planning.Ledger;
import drylap.planning.LedgerTerm;

/** The plan's ledger, kept up to date change by change; amounts are what the contract's table counts. */
final class Tally {
    private static final int HOUR = 60;

    private final Problem problem;
    private final Schedule schedule;
    private final CrewWalk walk;
    private final long[] amounts = new long[LedgerTerm.values().length];
    private final long[] unplanned;
    private final int[] risk;
    private final int[] changed;
    private final long[] openCourse;
    private final long[] late;
    private final CrewWalk.Totals[] totals;
    private long medium;

    Tally(Problem problem, Schedule schedule) {
        this.problem = problem;
        this.schedule = schedule;
        walk = new CrewWalk(problem, schedule);
        unplanned = new long[problem.tasks().size()];
        risk = new int[problem.tasks().size()];
        changed = new int[problem.tasks().size()];
        openCourse = new long[problem.courses().size()];
        late = new long[problem.facades().size()];
        totals = problem.crews().stream()
                .map(crew -> new CrewWalk.Totals(0, 0, 0, 0))
                .toArray(CrewWalk.Totals[]::new);
    }

    /** Counts what there is before any list is decoded: pinned tasks, and everything else unplanned. */
    void fresh() {
        problem.tasks().forEach(this::taskChanged);
        for (CourseWork course : problem.courses()) courseChanged(course, Task.INSTALL);
        for (CourseWork course : problem.courses()) courseChanged(course, Task.CLAD);
        for (CrewCalendar crew : problem.crews()) crewChanged(new CrewState(crew));
    }

    long medium() {
        return medium;
    }

    long soft() {
        long soft = 0;
        for (LedgerTerm term : LedgerTerm.values()) soft += amounts[term.ordinal()] * problem.weight(term);
        return soft;
    }

    long amount(LedgerTerm term) {
        return amounts[term.ordinal()];
    }

    void taskChanged(WorkTask task) {
        int i = task.index;
        int start = schedule.start[i];
        long cost = costOfAbsence(task, start);
        medium += cost - unplanned[i];
        unplanned[i] = cost;
        int odds = task.kind == Task.INSTALL && start != TimeAxis.NEVER
                ? task.odds.thousandths(start, start + task.minutes)
                : 0;
        add(LedgerTerm.RAIN_RISK, odds - risk[i]);
        risk[i] = odds;
        int differs = differs(task) ? 1 : 0;
        add(LedgerTerm.CHANGED, differs - changed[i]);
        changed[i] = differs;
    }

    private static long costOfAbsence(WorkTask task, int start) {
        long cost = start == TimeAxis.NEVER ? task.unplannedCost() : 0;
        boolean exposed = task.coverBy != TimeAxis.NEVER && start + task.minutes > task.coverBy;
        return cost + (exposed ? Problem.EXPOSED_COST : 0);
    }

    private boolean differs(WorkTask task) {
        int crew = schedule.crew[task.index];
        if (!task.published()) return false;
        return crew < 0
                || crew != task.publishedCrew
                || !problem.crews().get(crew).dates[schedule.day[task.index]].equals(task.publishedDate);
    }

    void courseChanged(CourseWork course, Task kind) {
        if (kind == Task.INSTALL) installsChanged(course);
        if (kind == Task.CLAD) cladChanged(course.facade);
    }

    private void installsChanged(CourseWork course) {
        int first = schedule.ends.firstInstallStart[course.index];
        long hours = 0;
        if (first != TimeAxis.NEVER) {
            int last = 0;
            for (WorkTask task : course.tasks(Task.INSTALL)) {
                int start = schedule.start[task.index];
                if (start != TimeAxis.NEVER) last = Math.max(last, start + task.minutes);
            }
            hours = Math.ceilDiv(last - first, HOUR);
        }
        add(LedgerTerm.OPEN_COURSE, hours - openCourse[course.index]);
        openCourse[course.index] = hours;
    }

    private void cladChanged(FacadeWork facade) {
        if (facade.due == TimeAxis.NEVER) return;
        int last = -TimeAxis.NEVER;
        for (CourseWork course : facade.courses) {
            int through = schedule.ends.through(course, Task.CLAD);
            last = Math.max(last, through == TimeAxis.NEVER ? problem.horizonEnd() : through);
        }
        long hours = Math.max(0, Math.ceilDiv(last - facade.due, HOUR));
        add(LedgerTerm.LATE_HANDOVER, hours - late[facade.index]);
        late[facade.index] = hours;
    }

    void crewChanged(CrewState state) {
        int index = state.crew.index;
        CrewWalk.Totals now = walk.totals(state.crew, state.units);
        CrewWalk.Totals before = totals[index];
        add(LedgerTerm.CREW_DAYS, now.days() - before.days());
        add(LedgerTerm.TRAVEL, now.travel() - before.travel());
        add(LedgerTerm.SETUP, now.setup() - before.setup());
        add(LedgerTerm.OVERTIME, now.overtime() - before.overtime());
        totals[index] = now;
    }

    private void add(LedgerTerm term, long difference) {
        amounts[term.ordinal()] += difference;
    }

    /** The ledger in the shape that leaves the planner. */
    Ledger ledger(long hard) {
        var lines = java.util.Arrays.stream(LedgerTerm.values())
                .map(term ->
                        new Ledger.Line(term, amount(term), problem.weight(term), amount(term) * problem.weight(term)))
                .toList();
        return new Ledger(lines, hard, medium, soft());
    }
}
