package drylap.planning.solver;

import drylap.kernel.TimeWindow;
import drylap.planning.JobFolder;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/** From when until when is planned: the regions of a job share theirs. */
record Span(TimeAxis axis, int horizonEnd) {
    /** @param now the moment to plan from; absent: the first shift's start */
    static Span of(JobFolder folder, @Nullable Instant now) {
        TimeAxis axis = TimeAxis.from(now != null ? now : firstShift(folder));
        int end = folder.shifts().stream()
                .mapToInt(shift -> axis.floor(shift.limit()))
                .max()
                .orElse(0);
        return new Span(axis, end);
    }

    /** Something, though there be no shift. */
    TimeWindow window() {
        return new TimeWindow(axis.zero(), axis.at(Math.max(horizonEnd, 1)));
    }

    private static Instant firstShift(JobFolder folder) {
        return folder.firstStart()
                .orElseThrow(() ->
                        new IllegalArgumentException("the job folder has no shifts, so there is nothing to plan from"));
    }
}
