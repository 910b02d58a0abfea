package drylap.planning;

import static drylap.persistence.jooq.Tables.JOB;
import static drylap.persistence.jooq.Tables.PLANNING_RUN;
import static drylap.persistence.jooq.Tables.RUN_POINT;

import drylap.kernel.FolderId;
import drylap.persistence.jooq.tables.records.JobRecord;
import drylap.persistence.jooq.tables.records.PlanningRunRecord;
import drylap.platform.JobId;
import java.time.Duration;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import org.jooq.DSLContext;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;

/** What each planning run was asked and how far it has come, as stored; its state is its job's. */
@Service
final class PlanningRuns {
    private final DSLContext db;

    PlanningRuns(DSLContext db) {
        this.db = db;
    }

    void open(JobId job, FolderId folder, PlanRequest request) {
        db.insertInto(PLANNING_RUN)
                .set(PLANNING_RUN.JOB_ID, job.value())
                .set(PLANNING_RUN.FOLDER_ID, folder.value())
                .set(PLANNING_RUN.PLAN_FROM, request.now())
                .set(PLANNING_RUN.TIME_LIMIT_MS, milliseconds(request.time()))
                .set(PLANNING_RUN.MOVE_LIMIT, request.moves())
                .set(PLANNING_RUN.SEED, request.seed())
                .execute();
    }

    PlanningRunRecord of(JobId job) {
        return db.selectFrom(PLANNING_RUN)
                .where(PLANNING_RUN.JOB_ID.eq(job.value()))
                .fetchSingle();
    }

    static PlanRequest request(PlanningRunRecord run) {
        Long limit = run.getTimeLimitMs();
        Duration time = limit == null ? null : Duration.ofMillis(limit);
        return new PlanRequest(run.getPlanFrom(), time, run.getMoveLimit(), run.getSeed()).besideOthers();
    }

    void note(JobId job, PlanProgress progress) {
        db.update(PLANNING_RUN)
                .set(PLANNING_RUN.ELAPSED_MS, progress.elapsed().toMillis())
                .set(PLANNING_RUN.MOVES, progress.moves())
                .set(PLANNING_RUN.MEDIUM, progress.medium())
                .set(PLANNING_RUN.SOFT, progress.soft())
                .set(PLANNING_RUN.PLANNED, progress.planned())
                .set(PLANNING_RUN.UNPLANNED, progress.unplanned())
                .where(PLANNING_RUN.JOB_ID.eq(job.value()))
                .execute();
    }

    void note(JobId job, PlanId plan) {
        db.update(PLANNING_RUN)
                .set(PLANNING_RUN.PLAN_ID, plan.value())
                .where(PLANNING_RUN.JOB_ID.eq(job.value()))
                .execute();
    }

    /** The last word on one moment counts. */
    void add(JobId job, RunPoint point) {
        db.insertInto(RUN_POINT)
                .set(RUN_POINT.JOB_ID, job.value())
                .set(RUN_POINT.AT_MS, point.at().toMillis())
                .set(RUN_POINT.MEDIUM, point.medium())
                .set(RUN_POINT.SOFT, point.soft())
                .set(RUN_POINT.UNPLANNED, point.unplanned())
                .onDuplicateKeyUpdate()
                .set(RUN_POINT.MEDIUM, point.medium())
                .set(RUN_POINT.SOFT, point.soft())
                .set(RUN_POINT.UNPLANNED, point.unplanned())
                .execute();
    }

    /** A run that begins again, or goes on from a moment, has not yet been where these points are. */
    void forgetPoints(JobId job, Duration after) {
        db.deleteFrom(RUN_POINT)
                .where(RUN_POINT.JOB_ID.eq(job.value()), RUN_POINT.AT_MS.ge(after.toMillis()))
                .execute();
    }

    List<JobId> underWay(FolderId folder) {
        return db.select(JOB.ID)
                .from(JOB)
                .join(PLANNING_RUN)
                .on(PLANNING_RUN.JOB_ID.eq(JOB.ID))
                .where(PLANNING_RUN.FOLDER_ID.eq(folder.value()), JOB.ENDED_AT.isNull())
                .fetch(row -> new JobId(row.value1()));
    }

    Map<FolderId, RunState> newest(Collection<FolderId> folders) {
        var found = db.select(PLANNING_RUN, JOB)
                .distinctOn(PLANNING_RUN.FOLDER_ID)
                .from(PLANNING_RUN)
                .join(JOB)
                .on(JOB.ID.eq(PLANNING_RUN.JOB_ID))
                .where(PLANNING_RUN.FOLDER_ID.in(
                        folders.stream().map(FolderId::value).toList()))
                .orderBy(PLANNING_RUN.FOLDER_ID, PLANNING_RUN.JOB_ID.desc())
                .fetch();
        var points = points(found.map(row -> Objects.requireNonNull(row.value2().getId())));
        return found.intoMap(
                row -> new FolderId(row.value1().getFolderId()),
                row -> state(
                        row.value1(),
                        row.value2(),
                        points.getOrDefault(row.value2().getId(), List.of())));
    }

    private Map<Long, List<RunPoint>> points(List<Long> jobs) {
        return db.selectFrom(RUN_POINT)
                .where(RUN_POINT.JOB_ID.in(jobs))
                .orderBy(RUN_POINT.JOB_ID, RUN_POINT.AT_MS)
                .fetchGroups(
                        RUN_POINT.JOB_ID,
                        row -> new RunPoint(
                                Duration.ofMillis(row.getAtMs()), row.getMedium(), row.getSoft(), row.getUnplanned()));
    }

    private static RunState state(PlanningRunRecord run, JobRecord job, List<RunPoint> points) {
        return new RunState(
                new RunId(job.getId()),
                RunState.Status.valueOf(job.getState().toUpperCase(Locale.ROOT)),
                request(run).time(),
                progress(run),
                points,
                job.getFailure());
    }

    /** How far it has come. */
    static PlanProgress progress(PlanningRunRecord run) {
        return new PlanProgress(
                Duration.ofMillis(run.getElapsedMs()),
                run.getMoves(),
                run.getMedium(),
                run.getSoft(),
                run.getPlanned(),
                run.getUnplanned());
    }

    private static @Nullable Long milliseconds(@Nullable Duration time) {
        return time == null ? null : time.toMillis();
    }
}
