package drylap.ui.drawn;

import drylap.planning.PlanProgress;
import drylap.planning.RunState;
import java.time.Duration;
import java.util.List;

/**
 * A planning run as the page shows it.
 *
 * @param ofSeconds how long it may take, whichever page asked for it; 0 where its time has no limit
 */
public record Run(
        String id,
        String status,
        String words,
        double seconds,
        double ofSeconds,
        long moves,
        long cost,
        int planned,
        int unplanned,
        boolean ended,
        List<Point> points) {
    /** What the best plan cost from a moment on; the more tasks it leaves out, the less its cost says. */
    public record Point(double seconds, long cost, int unplanned) {}

    public static Run of(RunState state) {
        PlanProgress progress = state.progress();
        return new Run(
                Long.toString(state.id().value()),
                status(state.status()),
                words(state),
                seconds(progress.elapsed()),
                state.limit() == null ? 0 : seconds(state.limit()),
                progress.moves(),
                progress.soft(),
                progress.planned(),
                progress.unplanned(),
                state.status().ended(),
                state.points().stream()
                        .map(point -> new Point(seconds(point.at()), point.soft(), point.unplanned()))
                        .toList());
    }

    private static double seconds(Duration time) {
        return time.toMillis() / 1000.0;
    }

    private static String status(RunState.Status status) {
        return switch (status) {
            case QUEUED -> "waiting";
            case RUNNING -> "running";
            case DONE -> "done";
            case STOPPED -> "stopped";
            case FAILED -> "failed";
        };
    }

    private static String words(RunState state) {
        return switch (state.status()) {
            case QUEUED -> "Waiting to plan";
            case RUNNING -> "Planning";
            case DONE -> "Planned";
            case STOPPED -> "Stopped; the best plan so far is kept";
            case FAILED -> "Planning failed: " + (state.failure() == null ? "no reason was given" : state.failure());
        };
    }
}
