package drylap.faults;

import java.sql.Connection;
import java.sql.SQLException;
import java.time.Duration;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import org.awaitility.Awaitility;

/** A planning run under way, as the database has it. */
final class Solve {
    private static final Duration PATIENCE = Duration.ofSeconds(240);
    /** By then where it stands has been kept more than once. */
    private static final long AT_WORK_MS = 6_000;

    private final TrialPostgres postgres;
    private final long run;

    Solve(TrialPostgres postgres, long run) {
        this.postgres = postgres;
        this.run = run;
    }

    /**
     * Where it stands.
     *
     * @param pid of the worker that has it
     * @param savedAt seconds of the database's clock
     */
    record Place(String state, int attempt, long pid, long medium, long soft, long elapsedMs, double savedAt) {
        boolean noWorseThan(Place other) {
            return medium < other.medium || medium == other.medium && soft <= other.soft;
        }
    }

    /** Waits until some worker is well under way with it. */
    Place awaitUnderWay() {
        return await(place -> place.state().equals("running") && place.elapsedMs() >= AT_WORK_MS);
    }

    /** How it stood last with one worker, and first with the next. */
    record Change(Place last, Place next) {}

    /** Looks until somebody else has begun from what was kept. */
    Change awaitChange(Place known) {
        var last = new AtomicReference<>(known);
        Place next = await(place -> {
            if (place.attempt() == known.attempt()) last.set(place);
            return place.attempt() > known.attempt()
                    && place.savedAt() > last.get().savedAt();
        });
        return new Change(last.get(), next);
    }

    private Place await(java.util.function.Predicate<Place> wanted) {
        return Awaitility.await()
                .atMost(PATIENCE)
                .pollInterval(Duration.ofMillis(100))
                .until(this::place, place -> place.filter(wanted).isPresent())
                .orElseThrow();
    }

    /** Nothing before a worker has kept where it stands, and while the database is away. */
    Optional<Place> place() {
        try (Connection database = postgres.connection();
                var statement = database.createStatement();
                var row = statement.executeQuery("""
                        select j.state, j.attempt, split_part(t.picked_by, '/', 2), w.medium, w.soft, w.elapsed_ms,
                               extract(epoch from w.saved_at)
                        from job j
                        join run_waypoint w on w.job_id = j.id
                        join scheduled_tasks t on t.task_name = 'job' and t.task_instance = j.id::text and t.picked
                        where j.id = %d""".formatted(run))) {
            if (!row.next()) return Optional.empty();
            return Optional.of(new Place(
                    row.getString(1),
                    row.getInt(2),
                    Long.parseLong(row.getString(3)),
                    row.getLong(4),
                    row.getLong(5),
                    row.getLong(6),
                    row.getDouble(7)));
        } catch (SQLException away) {
            return Optional.empty();
        }
    }
}
