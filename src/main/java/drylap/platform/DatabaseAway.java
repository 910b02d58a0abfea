package drylap.platform;

import java.sql.SQLException;
import java.sql.SQLTransientConnectionException;
import org.jspecify.annotations.Nullable;

/**
 * Tells a database that is not there for the moment from work that failed by itself: the work is then done again. By the classes of
 * SQLSTATE in appendix A of PostgreSQL's manual.
 */
final class DatabaseAway {
    private static final String CONNECTION = "08";
    /** Disk full, out of memory, too many connections. */
    private static final String RESOURCES = "53";
    /** Shut down by its operator, crashed, starting up. */
    private static final String SHUT_DOWN = "57P";
    /** An error of the disk. */
    private static final String SYSTEM = "58";

    private DatabaseAway() {}

    static boolean causes(Throwable failure) {
        for (Throwable cause = failure; cause != null; cause = cause.getCause())
            if (cause instanceof SQLException sql && isAway(sql)) return true;
        return false;
    }

    private static boolean isAway(SQLException failure) {
        if (failure instanceof SQLTransientConnectionException) return true;
        @Nullable String state = failure.getSQLState();
        return state != null
                && (state.startsWith(CONNECTION)
                        || state.startsWith(RESOURCES)
                        || state.startsWith(SHUT_DOWN)
                        || state.startsWith(SYSTEM));
    }
}
