package drylap.ui.drawn;

import drylap.planning.PlanProgress;
import drylap.planning.RunState;

/** A planning run as the page shows it. */
public record Run(
        String id,
        String status,
        String words,
        double seconds,
        long ofSeconds,
        long moves,
        long cost,
        int planned,
        int unplanned,
        boolean ended) {

    public static Run of(RunState state, long ofSeconds) {
        PlanProgress progress = state.progress();
        return new Run(
                Long.toString(state.id().value()),
                status(state.status()),
                words(state),
                progress.elapsed().toMillis() / 1000.0,
                ofSeconds,
                progress.moves(),
                progress.soft(),
                progress.planned(),
                progress.unplanned(),
                state.status().ended());
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
