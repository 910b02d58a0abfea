package drylap.planning.solver;

import drylap.kernel.Task;
import drylap.planning.LabourRow;
import drylap.sites.Opening;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/** One task at one opening in minutes of the axis, with everything about it that no plan changes. */
final class WorkTask {
    final int index;
    final Opening opening;
    final Task kind;
    final CourseWork course;
    final int site;
    final int minutes;
    final LabourRow labour;
    final OpenTimes open;
    final RainOdds odds;
    /** Delivery for an install; cure after a finished install for a test. */
    int earliest = -TimeAxis.NEVER;
    /** Where pinned tasks follow it. */
    int latestEnd = TimeAxis.NEVER;
    /** The end of the opening's own install if that was complete before this plan, else NEVER. */
    int ownInstalledEnd = TimeAxis.NEVER;
    /** The start of the next raining hour for an opening that stands open at the start, else NEVER. */
    int coverBy = TimeAxis.NEVER;

    boolean pinned;
    int pinnedStart;
    int pinnedCrew = -1;
    int pinnedDay;
    int publishedCrew = -1;
    int publishedStart;

    @Nullable
    LocalDate publishedDate;
    /** The opening's install in this plan. */
    @Nullable
    WorkTask install;

    WorkTask(
            int index,
            Opening opening,
            Task kind,
            CourseWork course,
            int minutes,
            LabourRow labour,
            OpenTimes open,
            RainOdds odds) {
        this.index = index;
        this.opening = opening;
        this.kind = kind;
        this.course = course;
        this.site = course.facade.site;
        this.minutes = minutes;
        this.labour = labour;
        this.open = open;
        this.odds = odds;
    }

    /** Set-up minutes in front of this task after {@code before} on the same day; the largest that applies, only. */
    int setupAfter(@Nullable WorkTask before) {
        if (before == null || before.site != site) return labour.setupSiteMin();
        if (before.course.facade != course.facade) return labour.setupFacadeMin();
        return before.course != course ? labour.setupLevelMin() : 0;
    }

    long unplannedCost() {
        return (1L + opening.priority()) * 1000;
    }

    boolean published() {
        return publishedDate != null;
    }
}
