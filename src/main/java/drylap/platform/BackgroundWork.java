package drylap.platform;

import static drylap.persistence.jooq.Tables.JOB;
import static drylap.persistence.jooq.Tables.SCHEDULED_TASKS;
import static org.jooq.impl.DSL.val;
import static org.jooq.impl.DSL.when;

import com.github.kagkarlsson.scheduler.SchedulerClient;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Collection;
import java.util.concurrent.locks.LockSupport;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.springframework.stereotype.Service;
import org.springframework.transaction.support.TransactionTemplate;

/** Long work, asked for here and done by whichever node is free. Joins the caller's transaction: no commit, no job. */
@Service
public final class BackgroundWork {
    private static final Condition WAITS = JOB.STATE.eq(JobStatus.QUEUED.code());
    private static final Duration A_MOMENT = Duration.ofMillis(100);
    private static final Condition UNDER_WAY = WAITS.or(JOB.STATE.eq(JobStatus.RUNNING.code()));

    private final DSLContext db;
    private final TransactionTemplate transaction;
    private final Clock clock;
    private final SchedulerClient claims;
    private final Turns turns;

    BackgroundWork(DSLContext db, TransactionTemplate transaction, Clock clock, SchedulerClient claims, Turns turns) {
        this.db = db;
        this.transaction = transaction;
        this.clock = clock;
        this.claims = claims;
        this.turns = turns;
    }

    /** Queues a job in its asker's turn ({@link Turns}); {@code payload} is all that its handler is told. */
    public JobId ask(String kind, String payload, Asker asker) {
        return transaction.execute(_ -> {
            Instant now = clock.instant();
            JobId id = new JobId(db.insertInto(JOB)
                    .set(JOB.KIND, kind)
                    .set(JOB.PAYLOAD, payload)
                    .set(JOB.ASKED_AT, now)
                    .set(JOB.ASKER, asker.name())
                    .set(JOB.ABOUT, asker.about())
                    .returning(JOB.ID)
                    .fetchSingle(JOB.ID));
            claims.schedule(JobTask.instance(id), now);
            turns.rank();
            return id;
        });
    }

    /** Asks a running job to end early with what it has; one that still waits ends at once. Ended jobs stay as they are. */
    public void stop(JobId id) {
        db.update(JOB)
                .set(JOB.STOP_ASKED, true)
                .set(JOB.STATE, when(WAITS, val(JobStatus.STOPPED.code())).else_(JOB.STATE))
                .set(JOB.ENDED_AT, when(WAITS, val(clock.instant())).else_(JOB.ENDED_AT))
                .where(JOB.ID.eq(id.value()), UNDER_WAY)
                .execute();
        turns.rank();
    }

    /** Ends a job at once; whatever it still wants to write is refused. Ended jobs stay as they are. */
    public void withdraw(JobId id) {
        db.update(JOB)
                .set(JOB.STOP_ASKED, true)
                .set(JOB.STATE, JobStatus.STOPPED.code())
                .set(JOB.ENDED_AT, clock.instant())
                .where(JOB.ID.eq(id.value()), UNDER_WAY)
                .execute();
        turns.rank();
    }

    /**
     * Ends jobs, and waits until no node has them in its hands any more, so that they can be taken away.
     *
     * @param patience how long it waits
     * @return whether that has come to pass
     */
    public boolean letGo(Collection<JobId> ids, Duration patience) {
        ids.forEach(this::withdraw);
        long begun = System.nanoTime();
        while (inHands(ids)) {
            if (System.nanoTime() - begun > patience.toNanos()) return false;
            LockSupport.parkNanos(A_MOMENT.toNanos());
            if (Thread.currentThread().isInterrupted()) return false;
        }
        return true;
    }

    /** Takes jobs away that were let go; joins the caller's transaction, in which nothing refers to them any more. */
    public void remove(Collection<JobId> ids) {
        db.deleteFrom(JOB)
                .where(JOB.ID.in(ids.stream().map(JobId::value).toList()))
                .execute();
    }

    /** A claim goes by itself once its job has ended. */
    private boolean inHands(Collection<JobId> ids) {
        return db.fetchExists(
                SCHEDULED_TASKS,
                SCHEDULED_TASKS.TASK_INSTANCE.in(
                        ids.stream().map(id -> JobTask.instance(id).getId()).toList()),
                SCHEDULED_TASKS.TASK_NAME.eq(JobTask.NAME));
    }
}
