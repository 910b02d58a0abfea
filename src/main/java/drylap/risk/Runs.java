package drylap.risk;

import drylap.climate.DrawnSky;
import drylap.climate.SiteSky;
import drylap.kernel.Task;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.BitSet;
import java.util.concurrent.atomic.AtomicIntegerArray;

/** What came of all trials. Each trial writes its own places and adds whole numbers, so that the order does not matter. */
final class Runs {
    final int trials;
    /** By facade and trial: the end of its last cladding; NEVER: not within the weeks looked at; negative: none is planned. */
    final int[][] handover;
    /** By trial. */
    final int[] crewDays;

    final int[] covers;
    final int[] wetOpenings;
    /** By trial, the days from the plan's start on which it rained on a site in hours in which somebody is planned there. */
    final BitSet[] rainOn;
    /** By job, in how many trials. */
    final AtomicIntegerArray rainedOn;

    final AtomicIntegerArray wetted;
    final AtomicIntegerArray covered;
    /** By crew and its day, in how many trials something of it was not done by that day. */
    final AtomicIntegerArray[] slipped;

    private final JobBook book;
    private final BitSet[][] plannedHours;

    Runs(JobBook book, int trials) {
        this.book = book;
        this.trials = trials;
        handover = new int[book.skies.walls().size()][trials];
        crewDays = new int[trials];
        covers = new int[trials];
        wetOpenings = new int[trials];
        rainOn = new BitSet[trials];
        rainedOn = new AtomicIntegerArray(book.jobs.length);
        wetted = new AtomicIntegerArray(book.jobs.length);
        covered = new AtomicIntegerArray(book.jobs.length);
        slipped = book.crews.stream()
                .map(crew -> new AtomicIntegerArray(crew.days()))
                .toArray(AtomicIntegerArray[]::new);
        plannedHours = plannedHours();
    }

    LocalDate firstDay() {
        return book.axis.at(book.start).atZone(zone()).toLocalDate();
    }

    private ZoneId zone() {
        return book.folder.sites().getFirst().zone();
    }

    /** By day and site. */
    private BitSet[][] plannedHours() {
        int days = 0;
        for (Job job : book.jobs) days = Math.max(days, dayOf(job) + 1);
        BitSet[][] hours = new BitSet[days][book.folder.sites().size()];
        for (BitSet[] day : hours) Arrays.setAll(day, _ -> new BitSet());
        for (Job job : book.jobs) {
            int grid = book.skies.at(job.site).grid();
            int first = Math.max(0, Math.floorDiv(job.planned - grid, SiteSky.HOUR));
            int last = Math.max(first, Math.floorDiv(job.planned + job.minutes - 1 - grid, SiteSky.HOUR));
            hours[dayOf(job)][job.site].set(first, last + 1);
        }
        return hours;
    }

    private int dayOf(Job job) {
        LocalDate date = book.axis.at(job.planned).atZone(zone()).toLocalDate();
        return Math.toIntExact(date.toEpochDay() - firstDay().toEpochDay());
    }

    int days() {
        return plannedHours.length;
    }

    void add(int trial, Replay replay, DrawnSky sky) {
        int[] last = new int[handover.length];
        Arrays.fill(last, -1);
        for (Job job : book.jobs) {
            int i = job.index;
            if (job.task == Task.CLAD) last[job.wall] = Math.max(last[job.wall], replay.end[i]);
            if (replay.rainedOn[i]) rainedOn.incrementAndGet(i);
            if (replay.wetted[i]) {
                wetted.incrementAndGet(i);
                wetOpenings[trial]++;
            }
            if (replay.covers[i] > 0) covered.addAndGet(i, replay.covers[i]);
            covers[trial] += replay.covers[i];
        }
        for (int wall = 0; wall < last.length; wall++) handover[wall][trial] = last[wall];
        addCrewDays(trial, replay);
        rainOn[trial] = rainOn(sky);
    }

    private void addCrewDays(int trial, Replay replay) {
        BitSet[] worked = new BitSet[book.crews.size()];
        BitSet[] late = new BitSet[worked.length];
        Arrays.setAll(worked, _ -> new BitSet());
        Arrays.setAll(late, _ -> new BitSet());
        for (Job job : book.jobs) {
            int day = replay.endDay[job.index];
            if (day < Integer.MAX_VALUE) worked[job.crew].set(day);
            if (day > job.day) late[job.crew].set(job.day);
        }
        for (int crew = 0; crew < worked.length; crew++) {
            crewDays[trial] += worked[crew].cardinality();
            AtomicIntegerArray ofCrew = slipped[crew];
            late[crew].stream().forEach(ofCrew::incrementAndGet);
        }
    }

    private BitSet rainOn(DrawnSky sky) {
        BitSet rained = new BitSet();
        for (int day = 0; day < plannedHours.length; day++)
            for (int site = 0; site < plannedHours[day].length; site++)
                if (sky.wet(site).intersects(plannedHours[day][site])) rained.set(day);
        return rained;
    }
}
