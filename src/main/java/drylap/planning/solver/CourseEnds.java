package drylap.planning.solver;

import drylap.kernel.Task;

/** When each course is through with each kind of task, as far as the schedule goes. */
final class CourseEnds {
    /** The end of installs, complete ones included, by course; what is unplanned is counted apart. */
    final int[] firstInstall;

    final int[] firstInstallStart;
    private final int[][] last;
    private final int[][] missing;

    private final Journal journal;

    CourseEnds(int courses, Journal journal) {
        this.journal = journal;
        firstInstall = new int[courses];
        firstInstallStart = new int[courses];
        last = new int[Task.values().length][courses];
        missing = new int[Task.values().length][courses];
    }

    void recompute(CourseWork course, Task kind, int[] start) {
        int latest = kind == Task.INSTALL ? course.lastInstalledEnd : -TimeAxis.NEVER;
        int earliestEnd = course.firstInstalledEnd;
        int earliestStart = TimeAxis.NEVER;
        int unplanned = 0;
        for (WorkTask task : course.tasks(kind)) {
            int at = start[task.index];
            if (at == TimeAxis.NEVER) {
                unplanned++;
                continue;
            }
            latest = Math.max(latest, at + task.minutes);
            earliestEnd = Math.min(earliestEnd, at + task.minutes);
            earliestStart = Math.min(earliestStart, at);
        }
        journal.set(last[kind.ordinal()], course.index, latest);
        journal.set(missing[kind.ordinal()], course.index, unplanned);
        if (kind == Task.INSTALL) {
            journal.set(firstInstall, course.index, earliestEnd);
            journal.set(firstInstallStart, course.index, earliestStart);
        }
    }

    int last(CourseWork course, Task kind) {
        return last[kind.ordinal()][course.index];
    }

    boolean missing(CourseWork course, Task kind) {
        return missing[kind.ordinal()][course.index] > 0;
    }

    /** The end of a kind on a course, NEVER while a task of it is unplanned. */
    int through(CourseWork course, Task kind) {
        return missing(course, kind) ? TimeAxis.NEVER : last(course, kind);
    }

    /** When installs and tests of a course have ended. */
    int ready(CourseWork course) {
        return Math.max(through(course, Task.INSTALL), through(course, Task.TEST));
    }
}
