package drylap.planning.solver;

import org.jspecify.annotations.Nullable;

/**
 * Finds the earliest legal start of a task on a crew that has done what it has done so far: travel and set-up first, inside
 * the shift with the way back, not across the break, wholly in open time, and around tasks that are pinned.
 */
final class Finder {
    private final int[][] travel;
    /** The answer of the last search that succeeded. */
    int day;

    int start;

    Finder(int[][] travelBetweenSites) {
        travel = travelBetweenSites;
    }

    /**
     * @param fromDay the crew's current day
     * @param clock the end of its last task that day
     * @param before that task; null when it has done nothing that day
     * @return whether there is a start; it is in {@link #day} and {@link #start}
     */
    boolean find(
            CrewCalendar crew,
            int fromDay,
            int clock,
            @Nullable WorkTask before,
            WorkTask task,
            int earliest,
            int latestEnd) {
        for (int d = fromDay; d < crew.days(); d++) {
            if (crew.from[d] + task.minutes > latestEnd) return false;
            if (crew.limit[d] < earliest + task.minutes) continue;
            WorkTask last = d == fromDay ? before : null;
            int found = onDay(crew, d, clock, last, task, Math.max(earliest, 0));
            if (found == TimeAxis.NEVER) continue;
            if (found + task.minutes > latestEnd) return false;
            day = d;
            start = found;
            return true;
        }
        return false;
    }

    private int onDay(CrewCalendar crew, int d, int clock, @Nullable WorkTask before, WorkTask task, int earliest) {
        WorkTask last = before;
        int free = clock;
        int next = crew.pinned.length == 0 ? 0 : nextPinned(crew, last == null ? crew.from[d] : free);
        while (true) {
            int ready = last == null ? crew.from[d] + crew.toSite[task.site] : free + travel[last.site][task.site];
            WorkTask fixed = next < crew.pinned.length && crew.pinned[next].pinnedStart < crew.limit[d]
                    ? crew.pinned[next]
                    : null;
            int latest =
                    (fixed == null ? crew.limit[d] - crew.fromSite[task.site] : before(fixed, task)) - task.minutes;
            int found = fit(crew, d, task, Math.max(earliest, ready + task.setupAfter(last)), latest);
            if (found != TimeAxis.NEVER || fixed == null) return found;
            last = fixed;
            free = fixed.pinnedStart + fixed.minutes;
            next++;
        }
    }

    /** The latest end of a task that still leaves the way and the set-up to a pinned one. */
    private int before(WorkTask fixed, WorkTask task) {
        return fixed.pinnedStart - fixed.setupAfter(task) - travel[task.site][fixed.site];
    }

    private static int nextPinned(CrewCalendar crew, int from) {
        int next = 0;
        while (next < crew.pinned.length && crew.pinned[next].pinnedStart < from) next++;
        return next;
    }

    private static int fit(CrewCalendar crew, int d, WorkTask task, int from, int latest) {
        int start = from;
        while (start <= latest) {
            start = task.open.firstFit(start, task.minutes);
            if (start > latest) break;
            if (start >= crew.breakUntil[d] || start + task.minutes <= crew.breakFrom[d]) return start;
            start = crew.breakUntil[d];
        }
        return TimeAxis.NEVER;
    }
}
