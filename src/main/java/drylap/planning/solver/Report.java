package drylap.planning.solver;

import drylap.planning.PlanProgress;
import java.time.Duration;
import java.util.function.Consumer;
import org.optaplanner.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;

/** Tells a watcher how far the search has come, a few times a second. */
final class Report {
    private static final Duration PAUSE = Duration.ofMillis(200);

    private final long began;
    private final Meter meter;
    private final Consumer<PlanProgress> watcher;
    private PlanProgress last = new PlanProgress(Duration.ZERO, 0, 0, 0, 0, 0);

    Report(long began, Meter meter, Consumer<PlanProgress> watcher) {
        this.began = began;
        this.meter = meter;
        this.watcher = watcher;
    }

    Duration elapsed() {
        return Duration.ofNanos(System.nanoTime() - began);
    }

    synchronized void tell(Schedule schedule) {
        int unplanned = 0;
        for (int start : schedule.start) if (start == TimeAxis.NEVER) unplanned++;
        tell(new PlanProgress(
                elapsed(),
                meter.moves(),
                schedule.tally.medium(),
                schedule.tally.soft(),
                schedule.start.length - unplanned,
                unplanned));
    }

    /** Costs are told at once; the count of tasks is decoded anew only when the medium cost has changed. */
    synchronized void better(CrewLists lists) {
        HardMediumSoftLongScore score = lists.getScore();
        if (-score.mediumScore() != last.medium()) {
            tell(lists.schedule());
            return;
        }
        PlanProgress now = new PlanProgress(
                elapsed(), meter.moves(), -score.mediumScore(), -score.softScore(), last.planned(), last.unplanned());
        if (now.elapsed().minus(last.elapsed()).compareTo(PAUSE) >= 0) tell(now);
        else
            last = new PlanProgress(
                    last.elapsed(), now.moves(), now.medium(), now.soft(), now.planned(), now.unplanned());
    }

    synchronized void tick() {
        if (elapsed().minus(last.elapsed()).compareTo(PAUSE) < 0) return;
        tell(new PlanProgress(elapsed(), meter.moves(), last.medium(), last.soft(), last.planned(), last.unplanned()));
    }

    private void tell(PlanProgress progress) {
        last = progress;
        watcher.accept(progress);
    }
}
