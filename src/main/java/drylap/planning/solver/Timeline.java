package drylap.planning.solver;

import drylap.planning.LedgerTerm;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** A crew's list while a first plan grows: units are put into the gaps between those that have their time already. */
final class Timeline {
    static final long NO_PLACE = Long.MAX_VALUE;

    /** What a minute's delay is worth, and one past the moment from which the trades after it run out of days. */
    private static final int MINUTE_COST = 1;

    private static final int LATE_MINUTE_COST = 40;

    /** How a unit leaves its crew. */
    private record Stand(int day, int clock, @Nullable WorkTask before) {}

    private static final Stand FRESH = new Stand(0, 0, null);

    final CrewCalendar crew;
    final List<Unit> units = new ArrayList<>();
    private final List<Stand> stands = new ArrayList<>();
    private final Problem problem;
    private final Schedule scratch;
    private final Finder finder;

    Timeline(CrewCalendar crew, Schedule scratch, Finder finder) {
        this.crew = crew;
        this.scratch = scratch;
        this.finder = finder;
        problem = scratch.problem();
    }

    /** The first place at which a unit may start at the minute. */
    int placeAt(int minute) {
        int low = 0;
        int high = units.size();
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (stands.get(middle).clock <= minute) low = middle + 1;
            else high = middle;
        }
        return low;
    }

    int end() {
        return units.size();
    }

    /** What it costs, in the ledger's unit, that the unit is done at a place and not before a minute; it is late from another one on; NO_PLACE if it does not fit. */
    long cost(Unit unit, int place, int wait, int lateFrom) {
        Stand stand = standBefore(place);
        int limit = place < units.size() ? startOf(units.get(place)) : TimeAxis.NEVER;
        long cost = 0;
        for (WorkTask task : unit.tasks) {
            Stand next = after(stand, task, wait, limit);
            if (next == null) {
                if (limit != TimeAxis.NEVER) return NO_PLACE;
                cost += TimeAxis.NEVER;
                continue;
            }
            cost += road(stand, next, task) + rain(task, next.clock - task.minutes);
            stand = next;
        }
        if (limit != TimeAxis.NEVER && !leavesTheWay(stand, units.get(place), limit)) return NO_PLACE;
        return cost + delay(stand.clock, lateFrom);
    }

    static long delay(int minute, int lateFrom) {
        return (long) minute * MINUTE_COST + (long) Math.max(0, minute - lateFrom) * LATE_MINUTE_COST;
    }

    /** Whether a unit at the end of the list would be done on the days on which it is published, and all of it. */
    boolean keepsDays(Unit unit, int wait) {
        Stand stand = standBefore(end());
        for (WorkTask task : unit.tasks) {
            stand = after(stand, task, wait, TimeAxis.NEVER);
            if (stand == null) return false;
            boolean otherDay = task.published() && !crew.dates[stand.day].equals(task.publishedDate);
            if (otherDay) return false;
        }
        return true;
    }

    private Stand standBefore(int place) {
        return place == 0 ? FRESH : stands.get(place - 1);
    }

    private int startOf(Unit unit) {
        for (WorkTask task : unit.tasks)
            if (scratch.start[task.index] != TimeAxis.NEVER) return scratch.start[task.index];
        return TimeAxis.NEVER;
    }

    private @Nullable Stand after(Stand stand, WorkTask task, int wait, int limit) {
        int earliest = scratch.readiness.earliest(task);
        int latestEnd = Math.min(limit, scratch.readiness.latestEnd(task));
        boolean found = earliest != TimeAxis.NEVER
                && finder.find(crew, stand.day, stand.clock, stand.before, task, Math.max(earliest, wait), latestEnd);
        return found ? new Stand(finder.day, finder.start + task.minutes, task) : null;
    }

    private boolean leavesTheWay(Stand stand, Unit next, int start) {
        WorkTask last = stand.before;
        if (last == null || start >= nextDay(stand.day)) return true;
        WorkTask first = next.tasks[0];
        return stand.clock + problem.travel()[last.site][first.site] + first.setupAfter(last) <= start;
    }

    private int nextDay(int day) {
        return day + 1 < crew.days() ? crew.from[day + 1] : TimeAxis.NEVER;
    }

    private long road(Stand from, Stand to, WorkTask task) {
        WorkTask before = from.before;
        if (before == null || from.day != to.day)
            return problem.weight(LedgerTerm.CREW_DAYS)
                    + 2L * crew.toSite[task.site] * problem.weight(LedgerTerm.TRAVEL);
        return problem.travel()[before.site][task.site] * problem.weight(LedgerTerm.TRAVEL)
                + task.setupAfter(before) * problem.weight(LedgerTerm.SETUP);
    }

    private long rain(WorkTask task, int start) {
        return task.kind == drylap.kernel.Task.INSTALL
                ? task.odds.thousandths(start, start + task.minutes) * problem.weight(LedgerTerm.RAIN_RISK)
                : 0;
    }

    void insert(Unit unit, int place, int wait) {
        Stand stand = standBefore(place);
        int limit = place < units.size() ? startOf(units.get(place)) : TimeAxis.NEVER;
        for (WorkTask task : unit.tasks) {
            Stand next = after(stand, task, wait, limit);
            if (next == null) continue;
            scratch.start[task.index] = finder.start;
            stand = next;
        }
        units.add(place, unit);
        stands.add(place, stand);
        scratch.ends.recompute(unit.course, unit.kind, scratch.start);
    }
}
