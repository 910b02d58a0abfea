package drylap.platform;

import static drylap.persistence.jooq.Tables.JOB;

import java.time.Duration;
import java.util.function.BooleanSupplier;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.springframework.transaction.support.TransactionTemplate;

/** One go at a job. Every write checks the attempt's number, so a node that was thought dead cannot write over its heir. */
final class JobAttempt implements Job {
    private static final long LOOK_EVERY_NS = Duration.ofMillis(250).toNanos();

    private final JobId id;
    private final String payload;
    private final int number;
    private final DSLContext db;
    private final TransactionTemplate transaction;
    private final BooleanSupplier nodeGoesDown;
    private volatile boolean halted;
    private volatile long lookedAt = System.nanoTime();

    JobAttempt(
            JobId id,
            String payload,
            int number,
            DSLContext db,
            TransactionTemplate transaction,
            BooleanSupplier nodeGoesDown) {
        this.id = id;
        this.payload = payload;
        this.number = number;
        this.db = db;
        this.transaction = transaction;
        this.nodeGoesDown = nodeGoesDown;
    }

    @Override
    public JobId id() {
        return id;
    }

    @Override
    public String payload() {
        return payload;
    }

    @Override
    public boolean halted() {
        if (halted || nodeGoesDown.getAsBoolean()) return true;
        long now = System.nanoTime();
        if (now - lookedAt >= LOOK_EVERY_NS) {
            lookedAt = now;
            halted = !db.fetchExists(JOB, held().and(JOB.STOP_ASKED.isFalse()));
        }
        return halted;
    }

    @Override
    public boolean write(Runnable change) {
        return Boolean.TRUE.equals(transaction.execute(_ -> {
            boolean mine =
                    db.selectFrom(JOB).where(held()).forUpdate().fetchOptional().isPresent();
            if (mine) change.run();
            return mine;
        }));
    }

    Condition held() {
        return JOB.ID.eq(id.value()).and(JOB.ATTEMPT.eq(number)).and(JOB.STATE.eq(JobStatus.RUNNING.code()));
    }
}
