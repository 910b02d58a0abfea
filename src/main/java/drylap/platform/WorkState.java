package drylap.platform;

import static drylap.persistence.jooq.Tables.JOB;
import static drylap.persistence.jooq.Tables.SCHEDULED_TASKS;
import static org.jooq.impl.DSL.function;

import drylap.kernel.Coded;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.OptionalLong;
import org.jooq.DSLContext;
import org.jooq.impl.SQLDataType;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;

/** How the work behind the pages stands on all nodes, and what room there is. Whether somebody may ask is asked above: this module knows nobody. */
@Service
public final class WorkState {
    private static final Duration FAILURES_SHOWN = Duration.ofDays(7);

    private final DSLContext db;
    private final Clock clock;
    private final Database database;
    private final Path data;

    WorkState(DSLContext db, Clock clock, Database database, PlatformSettings settings) {
        this.db = db;
        this.clock = clock;
        this.database = database;
        data = settings.data();
    }

    /**
     * A job that waits, runs, or failed of late.
     *
     * @param node that has it; none while it waits, and once it ended
     * @param heartbeat when that node last said that it lives
     * @param due when it is begun, at the earliest
     * @param failure why it failed
     */
    public record Line(
            long id,
            String kind,
            JobStatus status,
            Instant askedAt,
            int attempt,
            @Nullable String node,
            @Nullable Instant heartbeat,
            @Nullable Instant due,
            @Nullable String failure) {}

    /** Those of the last week that failed, after all that are under way; newest first. */
    public List<Line> jobs(int atMost) {
        return db.select(
                        JOB.ID,
                        JOB.KIND,
                        JOB.STATE,
                        JOB.ASKED_AT,
                        JOB.ATTEMPT,
                        SCHEDULED_TASKS.PICKED_BY,
                        SCHEDULED_TASKS.LAST_HEARTBEAT,
                        SCHEDULED_TASKS.EXECUTION_TIME,
                        JOB.FAILURE)
                .from(JOB)
                .leftJoin(SCHEDULED_TASKS)
                .on(SCHEDULED_TASKS
                        .TASK_NAME
                        .eq(JobTask.instance(new JobId(0)).getTaskName())
                        .and(SCHEDULED_TASKS.TASK_INSTANCE.eq(JOB.ID.cast(SQLDataType.CLOB))))
                .where(JOB.STATE.in(JobStatus.QUEUED.code(), JobStatus.RUNNING.code()))
                .or(JOB.STATE
                        .eq(JobStatus.FAILED.code())
                        .and(JOB.ENDED_AT.gt(clock.instant().minus(FAILURES_SHOWN))))
                .orderBy(JOB.STATE.eq(JobStatus.FAILED.code()), JOB.ID.desc())
                .limit(atMost)
                .fetch(row -> new Line(
                        row.value1(),
                        row.value2(),
                        Coded.of(JobStatus.class, row.value3()),
                        row.value4(),
                        row.value5(),
                        row.value6(),
                        row.value7(),
                        row.value8(),
                        row.value9()));
    }

    /** Bytes of the database on its disk. */
    public long databaseBytes() {
        var name = function("current_database", SQLDataType.VARCHAR);
        return db.select(function("pg_database_size", Long.class, name))
                .fetchSingle()
                .value1();
    }

    /** Bytes that are free where the data are; nothing where the database is on a machine of its own. */
    public OptionalLong freeBytes() {
        if (database.shared()) return OptionalLong.empty();
        try {
            return OptionalLong.of(Files.getFileStore(data).getUsableSpace());
        } catch (IOException unknown) {
            return OptionalLong.empty();
        }
    }
}
