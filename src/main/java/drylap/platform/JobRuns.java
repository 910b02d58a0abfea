package drylap.platform;

import static drylap.persistence.jooq.Tables.JOB;
import static org.jooq.impl.DSL.coalesce;
import static org.jooq.impl.DSL.val;
import static org.jooq.impl.DSL.when;

import drylap.persistence.jooq.tables.records.JobRecord;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Future;
import java.util.function.BooleanSupplier;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jooq.DSLContext;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.stereotype.Service;
import org.springframework.transaction.support.TransactionTemplate;

/** Does jobs on this node and writes down how each ends. */
@Service
final class JobRuns {
    private static final Logger LOG = LoggerFactory.getLogger(JobRuns.class);
    /** A job that takes its process down with it must not do so for ever. */
    static final int MOST_ATTEMPTS = 10;

    private final DSLContext db;
    private final TransactionTemplate transaction;
    private final Clock clock;
    private final JobPulse pulse;
    private final Map<String, JobHandler> handlers;
    private final JobMeters meters;
    private final Turns turns;

    JobRuns(
            DSLContext db,
            TransactionTemplate transaction,
            Clock clock,
            JobPulse pulse,
            List<JobHandler> handlers,
            JobMeters meters,
            Turns turns) {
        this.db = db;
        this.transaction = transaction;
        this.clock = clock;
        this.pulse = pulse;
        this.meters = meters;
        this.turns = turns;
        this.handlers = handlers.stream().collect(Collectors.toMap(JobHandler::kind, Function.identity()));
    }

    /**
     * Does the job; answers no where the node went down before its end, and it must be done again. A database that is away is thrown
     * to whoever asks, to do it again later: that is no failure of the job.
     */
    boolean run(JobId id, BooleanSupplier nodeGoesDown) {
        Optional<JobRecord> begun = begin(id);
        if (begun.isEmpty()) return true;
        JobRecord row = begun.get();
        JobAttempt attempt = new JobAttempt(id, row.getPayload(), row.getAttempt(), db, transaction, nodeGoesDown);
        try {
            work(handler(row), attempt);
            if (nodeGoesDown.getAsBoolean()) return requeued(attempt);
            end(attempt);
            turns.rank();
            meters.ended(row.getKind(), JobStatus.DONE.code());
        } catch (Exception failure) {
            if (DatabaseAway.causes(failure))
                throw new IllegalStateException(
                        "the database is away while job %d is done".formatted(id.value()), failure);
            if (nodeGoesDown.getAsBoolean()) return requeued(attempt);
            LOG.error("Job {} ({}) failed", id.value(), row.getKind(), failure);
            fail(attempt, reason(failure));
            turns.rank();
            meters.ended(row.getKind(), JobStatus.FAILED.code());
        }
        return true;
    }

    private void work(JobHandler handler, JobAttempt attempt) throws Exception {
        Future<?> beats = pulse.of(attempt);
        try {
            handler.run(attempt);
        } finally {
            beats.cancel(false);
        }
    }

    private Optional<JobRecord> begin(JobId id) {
        return db.update(JOB)
                .set(JOB.STATE, JobStatus.RUNNING.code())
                .set(JOB.ATTEMPT, JOB.ATTEMPT.plus(1))
                .set(JOB.STARTED_AT, coalesce(JOB.STARTED_AT, val(clock.instant())))
                .where(JOB.ID.eq(id.value()))
                .and(JOB.STATE.in(JobStatus.QUEUED.code(), JobStatus.RUNNING.code()))
                .returning()
                .fetchOptional();
    }

    private JobHandler handler(JobRecord row) {
        if (row.getAttempt() > MOST_ATTEMPTS)
            throw new IllegalStateException("given up: begun %d times and never ended".formatted(MOST_ATTEMPTS));
        JobHandler handler = handlers.get(row.getKind());
        if (handler == null) throw new IllegalStateException("nobody here does jobs of kind " + row.getKind());
        return handler;
    }

    private void end(JobAttempt attempt) {
        db.update(JOB)
                .set(
                        JOB.STATE,
                        when(JOB.STOP_ASKED, val(JobStatus.STOPPED.code())).else_(JobStatus.DONE.code()))
                .set(JOB.ENDED_AT, clock.instant())
                .where(attempt.held())
                .execute();
    }

    private void fail(JobAttempt attempt, String reason) {
        db.update(JOB)
                .set(JOB.STATE, JobStatus.FAILED.code())
                .set(JOB.FAILURE, reason)
                .set(JOB.ENDED_AT, clock.instant())
                .where(attempt.held())
                .execute();
    }

    private boolean requeued(JobAttempt attempt) {
        db.update(JOB)
                .set(JOB.STATE, JobStatus.QUEUED.code())
                .where(attempt.held())
                .execute();
        return false;
    }

    private static String reason(Exception failure) {
        String message = failure.getMessage();
        return message == null || message.isBlank() ? failure.getClass().getSimpleName() : message;
    }
}
