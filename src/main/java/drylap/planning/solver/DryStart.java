package drylap.planning.solver;

import drylap.kernel.Task;

/**
 * The driest start of an install on a day of a crew. Rain is counted by the hours that it touches, so that none is better than
 * the best start with an hour, or with the crew's day.
 */
final class DryStart {
    /** Where it does not fit at all. */
    static final int NO_PLACE = Integer.MAX_VALUE;

    private static final int HOUR = 60;

    private DryStart() {}

    /** In all of the day, the earliest of equals; where it begins, where none fits and for what rain does not harm. */
    static int of(Unit unit, CrewCalendar crew, int day) {
        int begins = Math.max(0, crew.from[day]);
        return unit.kind == Task.INSTALL ? from(begins, unit.tasks[0], crew, day) : begins;
    }

    /** The same in the rest of the day from a minute on. */
    static int from(int from, WorkTask install, CrewCalendar crew, int day) {
        int best = from;
        int least = risk(install, crew, day, from);
        for (int hour = install.odds.hourFrom(from); hour < crew.limit[day]; hour += HOUR) {
            int risk = risk(install, crew, day, hour);
            if (risk >= least) continue;
            least = risk;
            best = hour;
        }
        return best;
    }

    /** The chance of rain in thousandths when it waits until then; {@link #NO_PLACE} where it does not fit that day any more. */
    static int risk(WorkTask install, CrewCalendar crew, int day, int start) {
        int begin = fit(install, crew, day, start);
        int end = begin + install.minutes;
        return begin == TimeAxis.NEVER || end > crew.limit[day] ? NO_PLACE : install.odds.thousandths(begin, end);
    }

    private static int fit(WorkTask task, CrewCalendar crew, int day, int from) {
        int begin = task.open.firstFit(from, task.minutes);
        boolean overBreak =
                begin != TimeAxis.NEVER && begin < crew.breakUntil[day] && begin + task.minutes > crew.breakFrom[day];
        return overBreak ? task.open.firstFit(crew.breakUntil[day], task.minutes) : begin;
    }
}
