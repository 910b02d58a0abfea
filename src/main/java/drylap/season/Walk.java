package drylap.season;

import java.util.Arrays;

/**
 * The work of one drawn year, day by day. A trade's crews go to the wall that is due first and on to the next with what is left of
 * the day; wrap and cladding follow in the share in which the trades before them were through the evening before.
 */
final class Walk {
    private static final double THROUGH = 1e-6;

    private final SiteSeason season;
    private final int[] order;
    private final double[][] left;
    private final double[][] mayBeLeft;
    /** By wall: the day by whose end all is done, -1 where nothing was left, the number of days where never. */
    final int[] through;
    /** By task: crew-days with work. */
    final double[] crewDays = new double[Season.TASKS.size()];
    /** By month, wall and task: minutes left when it begins. */
    final double[][][] atMonth;

    /** So many more crews of one trade, from a day on until another. */
    record Extra(int task, int from, int until) {
        static final Extra NONE = new Extra(-1, 0, 0);

        int crews(int ofTask, int day) {
            return ofTask == task && day >= from && day < until ? 1 : 0;
        }
    }

    Walk(SiteSeason season) {
        this.season = season;
        order = season.order();
        int walls = season.walls.size();
        left = new double[walls][Season.TASKS.size()];
        mayBeLeft = new double[walls][Season.TASKS.size()];
        through = new int[walls];
        atMonth = new double[Season.MONTHS][walls][Season.TASKS.size()];
    }

    void run(double[][][] usable, Extra extra) {
        begin();
        int month = -1;
        for (int day = 0; day < season.calendar.days && !allThrough(); day++) {
            for (int now = season.calendar.monthOf(day); month < now; ) keep(++month);
            for (int wall = 0; wall < left.length; wall++) limit(wall, day);
            for (int task = 0; task < Season.TASKS.size(); task++) work(task, day, usable[task], extra);
            for (int wall = 0; wall < left.length; wall++)
                if (through[wall] == season.calendar.days && done(wall)) through[wall] = day;
        }
    }

    private void begin() {
        Arrays.fill(crewDays, 0);
        for (double[][] month : atMonth) for (double[] wall : month) Arrays.fill(wall, 0);
        for (int wall = 0; wall < left.length; wall++) {
            System.arraycopy(season.walls.get(wall).left, 0, left[wall], 0, left[wall].length);
            through[wall] = done(wall) ? -1 : season.calendar.days;
        }
    }

    private void keep(int month) {
        for (int wall = 0; wall < left.length; wall++)
            System.arraycopy(left[wall], 0, atMonth[month][wall], 0, left[wall].length);
    }

    private boolean allThrough() {
        for (int day : through) if (day == season.calendar.days) return false;
        return true;
    }

    private boolean done(int wall) {
        for (double minutes : left[wall]) if (minutes > THROUGH) return false;
        return true;
    }

    /** What must stay undone today, since windows or an earlier trade are missing. */
    private void limit(int wall, int day) {
        WallWork work = season.walls.get(wall);
        mayBeLeft[wall][0] = work.left[0] - work.delivered[day];
        double before = 0;
        for (int task = 1; task < Season.TASKS.size(); task++) {
            before = Math.max(before, share(wall, task - 1));
            mayBeLeft[wall][task] = (work.left[task] - work.ready[task]) * before;
        }
    }

    /** Of a task, how much is still left, from 1 down to 0. */
    private double share(int wall, int task) {
        double whole = season.walls.get(wall).left[task];
        return whole <= 0 ? 0 : left[wall][task] / whole;
    }

    private void work(int task, int day, double[][] usable, Extra extra) {
        double crews = season.crews[task] + extra.crews(task, day);
        double free = crews;
        for (int wall : order) {
            double can = left[wall][task] - mayBeLeft[wall][task];
            double minutes = usable[wall][day];
            if (free <= 0 || can <= THROUGH || minutes <= 0) continue;
            double taken = Math.min(free, can / minutes);
            left[wall][task] = Math.max(0, left[wall][task] - taken * minutes);
            free -= taken;
        }
        if (free < crews) crewDays[task] += crews * coming(task, day);
    }

    private double coming(int task, int day) {
        WorkingWeek week = season.weeks[task];
        return (double) week.coming(season.calendar.date(day)) / week.crews;
    }
}
