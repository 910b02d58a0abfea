package drylap.planning;

import drylap.platform.Job;
import java.time.Duration;
import org.jspecify.annotations.Nullable;

/** Keeps from time to time where a run's search stands. */
final class WaypointNotes {
    /** So much work is lost at most when a node dies; a large job's place is some megabytes to write. */
    private static final Duration EVERY = Duration.ofSeconds(5);

    private final Job job;
    private final RunWaypoints waypoints;
    private final Trail trail;
    private final ProgressNotes progress;
    private @Nullable Duration last;
    private @Nullable Waypoint kept;
    private boolean closed;

    WaypointNotes(Job job, RunWaypoints waypoints, Trail trail, ProgressNotes progress) {
        this.job = job;
        this.waypoints = waypoints;
        this.trail = trail;
        this.progress = progress;
    }

    synchronized void write() {
        Duration before = last;
        if (closed) return;
        if (before == null || progress.elapsed().minus(before).compareTo(EVERY) >= 0) writeNow();
    }

    /** The run has ended: nobody goes on with it. */
    synchronized void close() {
        closed = true;
    }

    /** The node goes down: whoever goes on loses nothing. */
    synchronized void writeNow() {
        Duration elapsed = progress.elapsed();
        Waypoint now = trail.now().orElse(null);
        if (now == null) return;
        Waypoint before = kept;
        boolean better = before == null || now.betterThan(before);
        boolean written = job.write(() -> {
            if (better) waypoints.keep(job.id(), new KeptWaypoint(elapsed, progress.moves(), now));
            else waypoints.note(job.id(), elapsed, progress.moves());
        });
        if (!written) return;
        last = elapsed;
        if (better) kept = now;
    }
}
