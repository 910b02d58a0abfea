package drylap.risk;

import drylap.climate.DrawnSky;
import drylap.climate.MinuteAxis;
import drylap.climate.SiteSky;
import drylap.kernel.Rule;
import drylap.kernel.Task;
import java.util.Arrays;
import java.util.BitSet;
import org.jspecify.annotations.Nullable;

/**
 * One trial: the plan as it would go under a drawn weather. Each crew keeps its order, nothing begins before its planned time,
 * and what comes late pushes what follows. A crew sees rain coming a while ahead: it does not begin what it could not end
 * before, and stops what it has begun; an install is covered and gone on with when the wall is open again. What is begun
 * is ended, also past the shift.
 */
final class Replay {
    private final JobBook book;
    private final DrawnSky sky;
    private final Draws draws;
    /** By job, NEVER: not within the weeks that are looked at. */
    final int[] end;
    /** By job, the crew's day on which it ends. */
    final int[] endDay;
    /** By job: rain fell while the opening stood open; it also drove on to the wall; how often it was covered. */
    final boolean[] rainedOn;

    final boolean[] wetted;
    final int[] covers;
    /** By crew: the end and the job before, on its day. */
    private final int[] day;

    private final int[] clock;
    private final @Nullable Job[] before;
    private final int[] warning;
    private final int[] skin;
    private final int[] cover;
    private int foundDay;
    private int found;

    Replay(JobBook book, DrawnSky sky, Draws draws) {
        this.book = book;
        this.sky = sky;
        this.draws = draws;
        int jobs = book.jobs.length;
        end = new int[jobs];
        endDay = new int[jobs];
        rainedOn = new boolean[jobs];
        wetted = new boolean[jobs];
        covers = new int[jobs];
        day = new int[book.crews.size()];
        clock = new int[day.length];
        before = new Job[day.length];
        warning = minutes(Rule.RAIN_WARNING_MIN);
        skin = minutes(Rule.SKIN_MIN);
        cover = minutes(Rule.COVER_MIN);
    }

    private int[] minutes(Rule rule) {
        int[] values = new int[book.folder.sites().size()];
        Arrays.setAll(values, site -> book.minutes(site, rule));
        return values;
    }

    void run() {
        Arrays.fill(day, 0);
        Arrays.fill(clock, 0);
        Arrays.fill(before, null);
        Arrays.fill(rainedOn, false);
        Arrays.fill(wetted, false);
        Arrays.fill(covers, 0);
        for (Job job : book.jobs) go(job);
    }

    private void go(Job job) {
        int ready = ready(job);
        int left = draws.minutes[job.index];
        int expected = job.minutes;
        int stopped = job.openBefore ? book.start : -1;
        while (find(job, ready, expected)) {
            if (stopped >= 0 && job.task == Task.INSTALL) resumed(job, stopped);
            int rain = job.task == Task.TEST ? MinuteAxis.NEVER : rainFrom(job, found);
            if (found + left <= rain) {
                through(job, found + left);
                return;
            }
            boolean install = job.task == Task.INSTALL;
            int putOn = install ? cover[job.site] : 0;
            int worked = Math.max(0, rain - putOn - found);
            left += putOn - worked;
            expected = Math.max(1, expected - worked) + putOn;
            if (install) covered(job);
            stopped = rain;
            stand(job, Math.max(found, rain));
            ready = rain;
        }
        end[job.index] = MinuteAxis.NEVER;
        endDay[job.index] = Integer.MAX_VALUE;
    }

    private int ready(Job job) {
        int ready = Math.max(job.planned, job.earliest);
        if (job.delivery >= 0) ready = Math.max(ready, draws.delivered[job.delivery]);
        if (job.install >= 0) ready = Math.max(ready, end[job.install] + job.cure);
        for (int other : job.after) ready = Math.max(ready, end[other]);
        return ready;
    }

    private void covered(Job job) {
        covers[job.index]++;
        rainedOn[job.index] = true;
    }

    /** Looks back at what fell since the work was left; what was open before the plan was covered when it first rained. */
    private void resumed(Job job, int since) {
        int hour = hourOf(job, since);
        int now = hourOf(job, found);
        int rain = sky.wet(job.site).nextSetBit(hour);
        if (rain >= 0 && rain < now && !rainedOn[job.index]) covered(job);
        int driven = sky.wetted(job.wall).nextSetBit(hour);
        if (driven >= 0 && driven < now) wetted[job.index] = true;
    }

    private void through(Job job, int at) {
        end[job.index] = at;
        endDay[job.index] = foundDay;
        stand(job, at);
    }

    private void stand(Job job, int at) {
        day[job.crew] = foundDay;
        clock[job.crew] = at;
        before[job.crew] = job;
    }

    private boolean find(Job job, int ready, int minutes) {
        CrewDays crew = book.crews.get(job.crew);
        if (ready >= MinuteAxis.NEVER) return false;
        for (int d = day[job.crew]; d < crew.days(); d++) {
            if (crew.limit[d] < ready + minutes) continue;
            Job last = d == day[job.crew] ? before[job.crew] : null;
            int there = last == null
                    ? crew.from[d] + crew.toSite[job.site]
                    : clock[job.crew] + book.roads[last.site][job.site];
            int from = Math.max(ready, there + job.setupAfter(last));
            found = fit(job, crew, d, from, minutes);
            foundDay = d;
            if (found < MinuteAxis.NEVER) return true;
        }
        return false;
    }

    private int fit(Job job, CrewDays crew, int d, int from, int minutes) {
        int latest = crew.limit[d] - crew.fromSite[job.site] - minutes;
        int start = from;
        while (start <= latest) {
            start = job.known.fit(start, minutes);
            if (start > latest) break;
            if (start < crew.breakUntil[d] && start + minutes > crew.breakFrom[d]) {
                start = crew.breakUntil[d];
                continue;
            }
            int dry = dry(job, start, minutes);
            if (dry == start) return start;
            start = dry;
        }
        return MinuteAxis.NEVER;
    }

    /** The minute itself where the crew would begin, else a later one to be looked at. */
    private int dry(Job job, int start, int minutes) {
        if (job.task == Task.TEST) return start;
        BitSet shut = job.task == Task.INSTALL ? sky.shut(job.wall) : sky.wet(job.site);
        int hour = hourOf(job, start);
        if (shut.get(hour)) return startOf(job, shut.nextClearBit(hour));
        int rain = rainFrom(job, start);
        int wanted = minutes + (job.task == Task.INSTALL ? skin[job.site] : 0);
        return rain < start + Math.min(wanted, warning[job.site]) ? rain : start;
    }

    private int rainFrom(Job job, int minute) {
        int hour = sky.wet(job.site).nextSetBit(hourOf(job, minute));
        return hour < 0 ? MinuteAxis.NEVER : startOf(job, hour);
    }

    private int hourOf(Job job, int minute) {
        return Math.max(0, Math.floorDiv(minute - grid(job), SiteSky.HOUR));
    }

    private int startOf(Job job, int hour) {
        return grid(job) + hour * SiteSky.HOUR;
    }

    private int grid(Job job) {
        return book.skies.at(job.site).grid();
    }
}
