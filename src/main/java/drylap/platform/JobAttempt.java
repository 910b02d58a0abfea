package drylap.platform;

import static drylap.persistence.jooq.Tables.JOB;

import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.BooleanSupplier;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.springframework.transaction.support.TransactionTemplate;

/** One go at a job. Every write checks the attempt's number, so a node that was thought dead cannot write over its heir. */
final class JobAttempt implements Job {
    private final JobId id;
    private final String payload;
    private final int number;
    private final DSLContext db;
    private final TransactionTemplate transaction;
    private final BooleanSupplier nodeGoesDown;
    private final List<Runnable> notes = new CopyOnWriteArrayList<>();
    private volatile boolean stopped;

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
        return stopped || leaving();
    }

    @Override
    public boolean leaving() {
        return nodeGoesDown.getAsBoolean();
    }

    @Override
    public boolean write(Runnable change) {
        return transaction.execute(_ -> {
            boolean mine =
                    db.selectFrom(JOB).where(held()).forUpdate().fetchOptional().isPresent();
            if (mine) change.run();
            return mine;
        });
    }

    @Override
    public void eachMoment(Runnable note) {
        notes.add(note);
    }

    /** What the pulse does: looks whether the job should go on, and lets its handler write notes. */
    void beat() {
        stopped = !db.fetchExists(JOB, held().and(JOB.STOP_ASKED.isFalse()));
        notes.forEach(Runnable::run);
    }

    Condition held() {
        return JOB.ID.eq(id.value()).and(JOB.ATTEMPT.eq(number)).and(JOB.STATE.eq(JobStatus.RUNNING.code()));
    }
}
