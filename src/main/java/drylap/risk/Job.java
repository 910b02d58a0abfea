package drylap.risk;

import drylap.climate.KnownTimes;
import drylap.climate.MinuteAxis;
import drylap.kernel.FacadeId;
import drylap.kernel.Task;
import drylap.planning.LabourRow;
import drylap.planning.Visit;
import drylap.sites.Opening;
import org.jspecify.annotations.Nullable;

/** A planned visit as the replay sees it: numbers, and what must be through before it. */
final class Job {
    final int index;
    final Visit visit;
    final Opening opening;
    final Task task;
    final int crew;
    final int site;
    final int wall;
    final int course;
    /** The crew's day, and the start in minutes. */
    final int day;

    final int planned;
    final int minutes;
    final LabourRow labour;
    final KnownTimes known;
    /** Jobs that end before this one begins. */
    int[] after = new int[0];
    /** The opening's install, on whose end the test waits for the cure; negative: none in the plan. */
    int install = -1;

    int cure;
    int earliest = -MinuteAxis.NEVER;
    /** Which delivery brings the window; negative: it is there. */
    int delivery = -1;
    /** An install that stands open when the plan begins. */
    boolean openBefore;

    Job(
            int index,
            Visit visit,
            Opening opening,
            int crew,
            int site,
            int wall,
            int course,
            int day,
            int planned,
            int minutes,
            LabourRow labour,
            KnownTimes known) {
        this.index = index;
        this.visit = visit;
        this.opening = opening;
        task = visit.task();
        this.crew = crew;
        this.site = site;
        this.wall = wall;
        this.course = course;
        this.day = day;
        this.planned = planned;
        this.minutes = minutes;
        this.labour = labour;
        this.known = known;
    }

    /** Set-up minutes in front of this job on the same day; the largest that applies, only. */
    int setupAfter(@Nullable Job before) {
        if (before == null || before.site != site) return labour.setupSiteMin();
        if (before.wall != wall) return labour.setupFacadeMin();
        return before.course != course ? labour.setupLevelMin() : 0;
    }

    FacadeId facade() {
        return visit.facade();
    }
}
