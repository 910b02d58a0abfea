package drylap.season;

import drylap.kernel.Task;
import drylap.planning.LabourTable;
import drylap.sites.Facade;
import drylap.sites.Opening;
import java.util.List;

/** What is left to do at one wall, in minutes of the labour table; arrays go by the place of a task in {@link Season#TASKS}. */
final class WallWork {
    final Facade wall;
    final double[] left = new double[Season.TASKS.size()];
    /** Of that, what waits for no work of an earlier trade. */
    final double[] ready = new double[Season.TASKS.size()];
    /** What is left of the install once windows have come that are there by the end of each day. */
    final double[] delivered;
    /** The least stretch that is of use: a mean opening's task, done or not. */
    final int[] least = new int[Season.TASKS.size()];
    /** The day of the calendar by whose end all is to be done; none: past every day. */
    final int due;

    WallWork(Facade wall, List<Opening> openings, LabourTable labour, Calendar calendar) {
        this.wall = wall;
        due = wall.handoverDue() == null ? Integer.MAX_VALUE : calendar.day(wall.handoverDue());
        delivered = new double[calendar.days];
        for (Opening opening : openings) add(opening, labour, calendar);
        for (int day = 1; day < delivered.length; day++) delivered[day] += delivered[day - 1];
        for (int task = 0; task < least.length; task++) least[task] = mean(openings, Season.TASKS.get(task), labour);
    }

    private void add(Opening opening, LabourTable labour, Calendar calendar) {
        List<Task> tasks = opening.tasks();
        boolean waits = false;
        for (int task = 0; task < left.length; task++) {
            if (!tasks.contains(Season.TASKS.get(task))) continue;
            int minutes = labour.minutes(opening, Season.TASKS.get(task));
            left[task] += minutes;
            if (!waits) ready[task] += minutes;
            waits = true;
            int comes = Math.max(0, calendar.day(opening.deliveredOn()));
            if (task == 0 && comes < delivered.length) delivered[comes] += minutes;
        }
    }

    private static int mean(List<Opening> openings, Task task, LabourTable labour) {
        return (int) Math.ceil(openings.stream()
                .filter(opening -> opening.designedTasks().contains(task))
                .mapToInt(opening ->
                        task == Task.INSTALL ? labour.installMinutes(opening) : labour.minutes(opening, task))
                .average()
                .orElse(1));
    }

    /** Not through within the days looked at is not in time, however far off the date is. */
    boolean inTime(int through, int days) {
        return through < 0 || through < days && through <= due;
    }

    boolean hasDue() {
        return due != Integer.MAX_VALUE;
    }
}
