package drylap.planning.solver;

import drylap.kernel.Task;
import java.util.Comparator;
import java.util.List;

/**
 * By when each course's installs had better be done, so that the trades after them get through before the horizon ends:
 * reckoned backwards, the last facade to be handed over first, from what the crews of a trade do on an average day.
 */
final class Deadlines {
    private static final int DAY = 1440;
    /** What roads, set-up and waiting add to the labour rows. */
    private static final double SLACK = 1.1;

    private final Problem problem;
    private final int[] installBy;
    private final int[] wrapBy;

    private Deadlines(Problem problem) {
        this.problem = problem;
        wrapBy = wrapBy(problem);
        installBy = new int[problem.courses().size()];
    }

    /** By course, in minutes. */
    static int[] installBy(Problem problem) {
        Deadlines deadlines = new Deadlines(problem);
        deadlines.reckon();
        return deadlines.installBy;
    }

    private void reckon() {
        double wrap = rate(Task.WRAP);
        double clad = rate(Task.CLAD);
        double left = problem.horizonEnd();
        double wrapLeft = problem.horizonEnd();
        List<FacadeWork> lastFirst = problem.facades().stream()
                .sorted(Comparator.comparingInt((FacadeWork facade) -> facade.due)
                        .thenComparingInt(facade -> facade.index)
                        .reversed())
                .toList();
        for (FacadeWork facade : lastFirst) {
            double wraps = minutes(facade, Task.WRAP);
            double clads = minutes(facade, Task.CLAD);
            left -= clads / clad;
            wrapLeft = Math.min(wrapLeft, left) - wraps / wrap;
            double chain = (wraps + clads) * DAY / shiftMinutes();
            double latest = Math.min(Math.min(left, wrapLeft), problem.horizonEnd() - chain - testing(facade.courses));
            limit(facade, (int) Math.max(0, latest));
        }
    }

    /** What is bare or has its apron already must be wrapped in time, and so must all courses below. */
    private void limit(FacadeWork facade, int latest) {
        for (CourseWork course : facade.courses)
            installBy[course.index] =
                    Math.max(0, Math.min(latest, wrapBy[course.index] - DAY - testing(List.of(course))));
    }

    /** By course, the minute by which it must be wrapped for its own sake or that of one above; NEVER where nothing waits so. */
    static int[] wrapBy(Problem problem) {
        int[] wrapBy = new int[problem.courses().size()];
        for (FacadeWork facade : problem.facades()) {
            int limit = TimeAxis.NEVER;
            for (CourseWork course : facade.courses.reversed()) {
                for (WorkTask wrap : course.tasks(Task.WRAP))
                    limit = Math.min(limit, Math.min(wrap.latestEnd, problem.wrapBy(wrap)));
                wrapBy[course.index] = limit;
            }
        }
        return wrapBy;
    }

    private int testing(List<CourseWork> courses) {
        boolean tested =
                courses.stream().anyMatch(course -> !course.tasks(Task.TEST).isEmpty());
        return tested
                ? problem.limitsOfSites().get(courses.getFirst().facade.site).cure() + DAY
                : 0;
    }

    private double minutes(FacadeWork facade, Task kind) {
        return SLACK
                * facade.courses.stream()
                        .flatMap(course -> course.tasks(kind).stream())
                        .filter(task -> !task.pinned)
                        .mapToInt(task -> task.minutes)
                        .sum();
    }

    /** Minutes of work of all crews of the kind in a minute of the calendar. */
    private double rate(Task kind) {
        long minutes = 0;
        for (CrewCalendar crew : problem.crews(kind))
            for (int day = 0; day < crew.days(); day++)
                minutes += Math.max(0, crew.end[day] - Math.max(0, crew.from[day]));
        return Math.max(1e-6, (double) minutes / Math.max(1, problem.horizonEnd()));
    }

    /** A crew's work on an average day of the calendar. */
    private double shiftMinutes() {
        int crews = Math.max(1, problem.crews(Task.CLAD).size());
        return Math.max(60, rate(Task.CLAD) / crews * DAY);
    }
}
