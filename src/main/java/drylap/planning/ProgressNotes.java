package drylap.planning;

import drylap.platform.Job;
import java.time.Duration;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/** Keeps a run's newest progress; a planner reports far more often than anyone can read, so only some of it is written. */
final class ProgressNotes implements Consumer<PlanProgress> {
    private final Job job;
    private final PlanningRuns runs;
    private final Duration elapsedBefore;
    private final long movesBefore;
    private volatile @Nullable PlanProgress last;
    private final RunCurve curve = new RunCurve();
    private @Nullable PlanProgress written;
    private boolean closed;

    /** @param before what a run had done that goes on */
    ProgressNotes(Job job, PlanningRuns runs, @Nullable KeptWaypoint before) {
        this.job = job;
        this.runs = runs;
        elapsedBefore = before == null ? Duration.ZERO : before.elapsed();
        movesBefore = before == null ? 0 : before.moves();
    }

    @Override
    public void accept(PlanProgress progress) {
        last = new PlanProgress(
                progress.elapsed().plus(elapsedBefore),
                progress.moves() + movesBefore,
                progress.medium(),
                progress.soft(),
                progress.planned(),
                progress.unplanned());
    }

    /** How long the run has searched, all nodes together. */
    Duration elapsed() {
        PlanProgress progress = last;
        return progress == null ? elapsedBefore : progress.elapsed();
    }

    long moves() {
        PlanProgress progress = last;
        return progress == null ? movesBefore : progress.moves();
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
        return new PlanProgress(
                elapsed(),
                moves(),
                plan.ledger().medium(),
                plan.ledger().soft(),
                plan.visits().size(),
                plan.unplanned().size());
    }
}
