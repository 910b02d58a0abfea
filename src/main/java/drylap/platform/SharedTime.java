package drylap.platform;

import java.sql.SQLException;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.time.OffsetDateTime;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.LongSupplier;
import javax.sql.DataSource;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * What time it is for all nodes that share a database: its time, looked at now and then, and carried on in between by what does not
 * jump when somebody sets this machine's clock. By a clock of its own that is an hour ahead a node would take the others for
 * dead and take their jobs, and write what the others find in the future.
 */
final class SharedTime implements InstantSource {
    private static final Logger LOG = LoggerFactory.getLogger(SharedTime.class);
    private static final Duration LOOK_EVERY = Duration.ofSeconds(10);
    /** An answer that was under way for longer says too little of when it was given. */
    private static final Duration LONGEST_WAY = Duration.ofSeconds(1);

    private static final Duration WORTH_A_WORD = Duration.ofSeconds(5);

    private final Asked asked;
    private final LongSupplier nanos;
    private final AtomicBoolean looking = new AtomicBoolean();
    private volatile Seen seen;
    private volatile long looked;
    private volatile boolean told;

    /** Asks for the time that counts. */
    @FunctionalInterface
    interface Asked {
        Instant now() throws SQLException;
    }

    /** It was so late when the nanoseconds stood at this. */
    private record Seen(Instant time, long nanos) {
        Instant at(long later) {
            return time.plusNanos(later - nanos);
        }
    }

    /** @param nanos what runs on whatever is done to the clock, as {@link System#nanoTime} */
    SharedTime(Asked asked, LongSupplier nanos) {
        this.asked = asked;
        this.nanos = nanos;
        looked = nanos.getAsLong();
        seen = new Seen(Instant.now(), looked);
        look();
    }

    static SharedTime of(DataSource database) {
        return new SharedTime(() -> askedOf(database), System::nanoTime);
    }

    private static Instant askedOf(DataSource database) throws SQLException {
        try (var connection = database.getConnection();
                var statement = connection.createStatement();
                var row = statement.executeQuery("select clock_timestamp()")) {
            row.next();
            return row.getObject(1, OffsetDateTime.class).toInstant();
        }
    }

    @Override
    public Instant instant() {
        long now = nanos.getAsLong();
        if (now - looked > LOOK_EVERY.toNanos() && looking.compareAndSet(false, true))
            Thread.ofVirtual().start(this::lookAndRest);
        return seen.at(now);
    }

    private void lookAndRest() {
        try {
            look();
        } finally {
            looking.set(false);
        }
    }

    /** Takes over the database's time; keeps to its own where there is no answer, or where the answer leaves open that its own is right. */
    void look() {
        long before = nanos.getAsLong();
        try {
            Instant answer = asked.now();
            long after = nanos.getAsLong();
            long way = after - before;
            if (way > LONGEST_WAY.toNanos()) return;
            Seen now = new Seen(answer, before + way / 2);
            Duration off = Duration.between(seen.at(after), now.at(after)).abs();
            if (off.toNanos() > way / 2) seen = now;
            tell(Duration.between(seen.at(after), Instant.now()));
        } catch (SQLException away) {
            LOG.debug("The database does not tell the time", away);
        } finally {
            looked = nanos.getAsLong();
        }
    }

    /** Once each time that it comes to be wrong. */
    private void tell(Duration ahead) {
        boolean wrong = ahead.abs().compareTo(WORTH_A_WORD) > 0;
        if (wrong && !told)
            LOG.warn(
                    "This machine's clock is {} s {} the database's, whose time counts here: set it right, since its other programs go by it",
                    ahead.abs().toSeconds(),
                    ahead.isNegative() ? "behind" : "ahead of");
        told = wrong;
    }
}
