package drylap.faults;

import java.sql.Connection;
import java.sql.SQLException;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/** What operations are called: by what they do, so that the database can be asked for the same names. */
final class Names {
    private Names() {}

    static String mark(long folder, String opening, String line) {
        return "mark %d %s %s".formatted(folder, opening, line);
    }

    static String key(String key) {
        return "mark with key " + key;
    }

    static String bringIn(String name, int openings) {
        return "bring in %s with %d openings".formatted(name, openings);
    }

    static String publish(long folder, @Nullable Long after, long plan) {
        return "publish %d after %s plan %d".formatted(folder, after, plan);
    }

    /** One plan only takes the place of a publication. */
    static String takePlace(long folder, @Nullable Long after) {
        return "take the place %d after %s".formatted(folder, after);
    }

    static String run(long folder, long limitMs) {
        return "run %d of %d ms".formatted(folder, limitMs);
    }

    /** How often each operation is in the database; only what the driver's folders and programs have. */
    static Map<String, Long> found(Connection database) throws SQLException {
        Map<String, Long> found = new TreeMap<>();
        count(
                found,
                database,
                "select 'mark ' || folder_id || ' ' || opening || ' ' || line from step_mark where kind = 'done'");
        // marks of other programs get keys of their own, which are known to nobody outside
        count(found, database, "select 'mark with key ' || mark_key from step_mark where note = 'offline'");
        count(
                found,
                database,
                "select 'bring in ' || name || ' with ' || (select count(*) from opening o where o.folder_id = f.id)"
                        + " || ' openings' from job_folder f");
        count(
                found,
                database,
                "select 'publish ' || folder_id || ' after ' || coalesce(follows::text, 'null') || ' plan ' || plan_id"
                        + " from publication");
        count(
                found,
                database,
                "select 'take the place ' || folder_id || ' after ' || coalesce(follows::text, 'null') from publication");
        // a run that failed because the database was away is as good as lost
        count(
                found,
                database,
                "select 'run ' || r.folder_id || ' of ' || r.time_limit_ms || ' ms' from planning_run r join job on job.id = r.job_id"
                        + " where job.state <> 'failed'");
        return found;
    }

    private static void count(Map<String, Long> found, Connection database, String query) throws SQLException {
        try (var statement = database.createStatement();
                var rows = statement.executeQuery(query)) {
            while (rows.next()) found.merge(rows.getString(1), 1L, Long::sum);
        }
    }
}
