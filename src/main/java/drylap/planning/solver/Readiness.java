package drylap.planning.solver;

import drylap.kernel.Task;

/** Between when and when a task may be done, as the schedule stands: what must be through first, and what must not wait longer. */
final class Readiness {
    private final Problem problem;
    private final CourseEnds ends;
    private final int[] start;

    Readiness(Problem problem, CourseEnds ends, int[] start) {
        this.problem = problem;
        this.ends = ends;
        this.start = start;
    }

    /** When what must come first has ended; NEVER while a part of that is unplanned. */
    int earliest(WorkTask task) {
        return switch (task.kind) {
            case INSTALL -> task.earliest;
            case TEST -> tested(task);
            case WRAP -> Math.max(ends.ready(task.course), endBelow(task));
            case CLAD -> Math.max(readyToClad(task.course), endBelow(task));
        };
    }

    private int tested(WorkTask task) {
        WorkTask install = task.install;
        if (install == null) return task.earliest;
        int at = start[install.index];
        return at == TimeAxis.NEVER
                ? at
                : at + install.minutes + problem.limits(task).cure();
    }

    private int readyToClad(CourseWork course) {
        return course.tasks(Task.WRAP).isEmpty() ? ends.ready(course) : ends.through(course, Task.WRAP);
    }

    private int endBelow(WorkTask task) {
        CourseWork below = problem.below(task.course, task.kind);
        return below == null ? -TimeAxis.NEVER : ends.through(below, task.kind);
    }

    /** By when a wrap must have ended, so that no apron and no bare opening waits too long. */
    int latestEnd(WorkTask task) {
        if (task.kind != Task.WRAP) return task.latestEnd;
        int apron = ends.firstInstall[task.course.index] + problem.limits(task).apron();
        return Math.min(task.latestEnd, Math.min(apron, bareUntil(task)));
    }

    private int bareUntil(WorkTask task) {
        if (task.opening.method().barrierFirst()) return TimeAxis.NEVER;
        WorkTask install = task.install;
        if (install == null) return task.ownInstalledEnd + problem.limits(task).bare();
        int at = start[install.index];
        return at == TimeAxis.NEVER
                ? TimeAxis.NEVER
                : at + install.minutes + problem.limits(task).bare();
    }
}
