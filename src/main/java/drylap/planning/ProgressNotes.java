package drylap.planning;

import drylap.platform.Job;
import java.time.Duration;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/** Keeps a run's newest progress; a planner reports far more often than anyone can read, so only some of it is written. */
final class ProgressNotes implements Consumer<PlanProgress> {
    private final Job job;
    private final PlanningRuns runs;
    private volatile @Nullable PlanProgress last;
    private final RunCurve curve = new RunCurve();
    private @Nullable PlanProgress written;
    private boolean closed;

    ProgressNotes(Job job, PlanningRuns runs) {
        this.job = job;
        this.runs = runs;
    }

    @Override
    public void accept(PlanProgress progress) {
        last = progress;
    }

    synchronized void write() {
        PlanProgress progress = last;
        if (closed || progress == null || progress.equals(written)) return;
        written = progress;
        var point = curve.next(progress);
        job.write(() -> {
            runs.note(job.id(), progress);
            point.ifPresent(one -> runs.add(job.id(), one));
        });
    }

    /** The last note, after which no other is written: time and moves as reported, costs and counts as in the plan. */
    synchronized PlanProgress closing(Plan plan) {
        closed = true;
        PlanProgress progress = last;
        return new PlanProgress(
                progress == null ? Duration.ZERO : progress.elapsed(),
                progress == null ? 0 : progress.moves(),
                plan.ledger().medium(),
                plan.ledger().soft(),
                plan.visits().size(),
                plan.unplanned().size());
    }
}
