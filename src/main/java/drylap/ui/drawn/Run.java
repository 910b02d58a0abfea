package drylap.ui.drawn;

import drylap.planning.PlanProgress;
import drylap.planning.RunState;
import drylap.speech.Speech;
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

    public static Run of(Speech say, RunState state) {
        PlanProgress progress = state.progress();
        return new Run(
                Long.toString(state.id().value()),
                status(state.status()),
                words(say, state),
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

    private static String words(Speech say, RunState state) {
        return switch (state.status()) {
            case QUEUED -> say.it("Waiting to plan");
            case RUNNING -> say.it("Planning");
            case DONE -> say.it("Planned");
            case STOPPED -> say.it("Stopped; the best plan so far is kept");
            case FAILED ->
                state.failure() == null
                        ? say.it("Planning failed: no reason was given")
                        : say.it("Planning failed: {0}", state.failure());
        };
    }
}
