package drylap.planning;

import drylap.platform.Job;
import java.time.Duration;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/** Writes a run's progress down, at most four times a second: a planner reports far more often than anyone can read. */
final class ProgressNotes implements Consumer<PlanProgress> {
    private static final long PAUSE_NS = Duration.ofMillis(250).toNanos();

    private final Job job;
    private final PlanningRuns runs;
    private @Nullable PlanProgress last;
    private long writtenAt = System.nanoTime() - PAUSE_NS;

    ProgressNotes(Job job, PlanningRuns runs) {
        this.job = job;
        this.runs = runs;
    }

    @Override
    public synchronized void accept(PlanProgress progress) {
        last = progress;
        long now = System.nanoTime();
        if (now - writtenAt < PAUSE_NS) return;
        writtenAt = now;
        job.write(() -> runs.note(job.id(), progress));
    }

    /** Time and moves as last reported, costs and counts as they stand in the plan. */
    synchronized PlanProgress closing(Plan plan) {
        return new PlanProgress(
                last == null ? Duration.ZERO : last.elapsed(),
                last == null ? 0 : last.moves(),
                plan.ledger().medium(),
                plan.ledger().soft(),
                plan.visits().size(),
                plan.unplanned().size());
    }
}
