package drylap.planning.solver;

import drylap.kernel.Task;
import drylap.sites.Site;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * A task for which a region lacks a crew's day: it has no place though nothing it waits for is missing, or another has none
 * because it is done too late.
 *
 * @param from the minute from which it may start
 * @param until the minute by which it must have ended
 */
record Lack(WorkTask task, Site site, int from, int until) {
    /** A water test leaves the trades after it so many minutes, or its install should come earlier. */
    private static final int LAST_DAYS = 4 * 1440;

    /** What the wraps of one more level take, in minutes. */
    private static final int A_LEVEL = 360;

    /** By when they may start. */
    static List<Lack> of(CrewLists lists) {
        Schedule schedule = lists.schedule();
        List<Lack> lacks = new ArrayList<>();
        for (Unit unit : lists.problem().units())
            for (WorkTask task : unit.tasks)
                if (schedule.start[task.index] == TimeAxis.NEVER) add(task, schedule, lacks);
        lacks.sort(Comparator.comparingInt(Lack::from));
        return lacks;
    }

    private static void add(WorkTask task, Schedule schedule, List<Lack> lacks) {
        Problem problem = schedule.problem();
        int ready = schedule.readiness.earliest(task);
        if (ready == TimeAxis.NEVER) return;
        int until = Math.min(schedule.readiness.latestEnd(task), problem.horizonEnd());
        boolean lateTest = task.kind == Task.TEST && until - ready < LAST_DAYS;
        int from = Math.max(0, lateTest ? possible(task, problem) : ready);
        if (from + task.minutes <= until) lacks.add(new Lack(task, siteOf(task, schedule), from, until));
        else if (task.kind == Task.WRAP) addLateTests(task, schedule, until, lacks);
    }

    /** A wrap that could only begin after its limit may wait for water tests, of its course or below, that come late. */
    private static void addLateTests(WorkTask wrap, Schedule schedule, int until, List<Lack> lacks) {
        int by = until - wrap.minutes;
        for (CourseWork course = wrap.course; course != null; course = course.wrapsAbove) {
            for (WorkTask test : course.tasks(Task.TEST)) {
                int from = Math.max(0, possible(test, schedule.problem()));
                int end = schedule.start[test.index] + test.minutes;
                if (end > by && from + test.minutes <= by) lacks.add(new Lack(test, siteOf(test, schedule), from, by));
            }
            by -= A_LEVEL;
        }
    }

    /** When a test might begin if its install came as soon as its window. */
    private static int possible(WorkTask test, Problem problem) {
        WorkTask install = test.install;
        if (install == null) return test.earliest;
        return Math.max(0, install.earliest)
                + install.minutes
                + problem.limits(test).cure();
    }

    private static Site siteOf(WorkTask task, Schedule schedule) {
        return schedule.problem().sites().get(task.site);
    }
}
