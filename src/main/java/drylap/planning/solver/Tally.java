package drylap.planning.solver;

import drylap.kernel.Task;
import drylap.planning.Ledger;
import drylap.planning.LedgerTerm;
import java.util.List;

/** The plan's ledger, kept up to date change by change; amounts are what the contract's table counts. */
final class Tally {
    private static final int HOUR = 60;
    /** In the order of {@link CrewWalk.Totals#inOrder}. */
    private static final List<LedgerTerm> CREW_TERMS =
            List.of(LedgerTerm.CREW_DAYS, LedgerTerm.TRAVEL, LedgerTerm.SETUP, LedgerTerm.OVERTIME);

    private final Problem problem;
    private final Schedule schedule;
    private final CrewWalk walk;
    private final long[] amounts = new long[LedgerTerm.values().length];
    private final long[] weights = new long[amounts.length];
    private final long[] keptAmounts = new long[LedgerTerm.values().length];
    private final Journal journal;
    private final int[] absence;
    private final int[] risk;
    private final int[] changed;
    private final int[] openCourse;
    private final int[] late;
    private final int[][] totals;
    private final int[][] ofUnits;
    private final RoadCount tail;
    private long medium;
    private long soft;
    private long keptMedium;
    private long keptSoft;

    Tally(Problem problem, Schedule schedule, Journal journal) {
        this.problem = problem;
        this.schedule = schedule;
        this.journal = journal;
        walk = new CrewWalk(problem, schedule);
        absence = new int[problem.tasks().size()];
        risk = new int[problem.tasks().size()];
        changed = new int[problem.tasks().size()];
        openCourse = new int[problem.courses().size()];
        late = new int[problem.facades().size()];
        totals = new int[CREW_TERMS.size()][problem.crews().size()];
        ofUnits = new int[CREW_TERMS.size()][problem.units().size()];
        tail = new RoadCount(problem.travel());
        for (LedgerTerm term : LedgerTerm.values()) weights[term.ordinal()] = problem.weight(term);
    }

    void keepSums() {
        System.arraycopy(amounts, 0, keptAmounts, 0, amounts.length);
        keptMedium = medium;
        keptSoft = soft;
    }

    void restoreSums() {
        System.arraycopy(keptAmounts, 0, amounts, 0, amounts.length);
        medium = keptMedium;
        soft = keptSoft;
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
        return soft;
    }

    long amount(LedgerTerm term) {
        return amounts[term.ordinal()];
    }

    /** The chance of rain over an install where it stands now, in thousandths; 0 for what is not planned or no install. */
    int risk(WorkTask task) {
        return risk[task.index];
    }

    /** What a unit costs by itself: rain, road, set-up, and a crew-day where it is the first of one. */
    long costOf(Unit unit) {
        long rain = 0;
        for (WorkTask task : unit.tasks) rain += risk[task.index];
        long cost = rain * problem.weight(LedgerTerm.RAIN_RISK);
        for (int term = 0; term < CREW_TERMS.size(); term++)
            cost += ofUnits[term][unit.index] * problem.weight(CREW_TERMS.get(term));
        return cost;
    }

    void taskChanged(WorkTask task) {
        int i = task.index;
        int start = schedule.start[i];
        long cost = costOfAbsence(task, start);
        medium += cost - absence[i];
        journal.set(absence, i, (int) cost);
        int odds = task.kind == Task.INSTALL && start != TimeAxis.NEVER
                ? task.odds.thousandths(start, start + task.minutes)
                : 0;
        count(LedgerTerm.RAIN_RISK, risk, i, odds);
        count(LedgerTerm.CHANGED, changed, i, differs(task) ? 1 : 0);
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
        int hours = 0;
        if (first != TimeAxis.NEVER) {
            int last = 0;
            for (WorkTask task : course.tasks(Task.INSTALL)) {
                int start = schedule.start[task.index];
                if (start != TimeAxis.NEVER) last = Math.max(last, start + task.minutes);
            }
            hours = Math.ceilDiv(last - first, HOUR);
        }
        count(LedgerTerm.OPEN_COURSE, openCourse, course.index, hours);
    }

    private void cladChanged(FacadeWork facade) {
        if (facade.due == TimeAxis.NEVER) return;
        int last = -TimeAxis.NEVER;
        for (CourseWork course : facade.courses) {
            int through = schedule.ends.through(course, Task.CLAD);
            last = Math.max(last, through == TimeAxis.NEVER ? problem.horizonEnd() : through);
        }
        count(LedgerTerm.LATE_HANDOVER, late, facade.index, Math.max(0, Math.ceilDiv(last - facade.due, HOUR)));
    }

    /** What the tasks of a unit cost on the road, but for the way back of the last day. */
    void roadChanged(Unit unit, RoadCount road) {
        count(LedgerTerm.CREW_DAYS, ofUnits[0], unit.index, road.days);
        count(LedgerTerm.TRAVEL, ofUnits[1], unit.index, road.travel);
        count(LedgerTerm.SETUP, ofUnits[2], unit.index, road.setup);
        count(LedgerTerm.OVERTIME, ofUnits[3], unit.index, road.overtime);
    }

    /** What a crew costs beyond its units: the last way back, or everything where it has visits that stay as they are. */
    void crewChanged(CrewState end) {
        if (end.crew.pinned.length == 0) {
            tail.clear();
            tail.home(end);
            count(LedgerTerm.TRAVEL, totals[1], end.crew.index, tail.travel);
            count(LedgerTerm.OVERTIME, totals[3], end.crew.index, tail.overtime);
            return;
        }
        int[] now = walk.totals(end.crew, end.units).inOrder();
        for (int term = 0; term < now.length; term++)
            count(CREW_TERMS.get(term), totals[term], end.crew.index, now[term]);
    }

    private void count(LedgerTerm term, int[] of, int place, int now) {
        int more = now - of[place];
        amounts[term.ordinal()] += more;
        soft += more * weights[term.ordinal()];
        journal.set(of, place, now);
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
