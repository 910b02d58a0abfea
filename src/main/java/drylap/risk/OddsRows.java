package drylap.risk;

import static drylap.persistence.jooq.Tables.JOB;
import static drylap.persistence.jooq.Tables.ODDS_RUN;

import drylap.kernel.FolderId;
import drylap.persistence.jooq.tables.records.JobRecord;
import drylap.persistence.jooq.tables.records.OddsRunRecord;
import drylap.planning.PlanId;
import drylap.platform.JobId;
import java.time.Instant;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jooq.DSLContext;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.stereotype.Service;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.json.JsonMapper;

/** The reckonings of plans and their reports, as stored. */
@Service
final class OddsRows {
    private static final Logger LOG = LoggerFactory.getLogger(OddsRows.class);
    private static final JsonMapper JSON = JsonMapper.builder().build();

    private final DSLContext db;

    /** A reckoning and its job. */
    record Run(OddsRunRecord row, JobRecord job) {}

    record Kept(RiskReport report, Basis basis, Instant at) {}

    OddsRows(DSLContext db) {
        this.db = db;
    }

    void open(JobId job, FolderId folder, PlanId plan, RiskRequest request) {
        db.insertInto(ODDS_RUN)
                .set(ODDS_RUN.JOB_ID, job.value())
                .set(ODDS_RUN.FOLDER_ID, folder.value())
                .set(ODDS_RUN.PLAN_ID, plan.value())
                .set(ODDS_RUN.TRIALS, request.trials())
                .set(ODDS_RUN.SEED, request.seed())
                .execute();
    }

    OddsRunRecord of(JobId job) {
        return db.selectFrom(ODDS_RUN).where(ODDS_RUN.JOB_ID.eq(job.value())).fetchSingle();
    }

    void note(JobId job, int done) {
        db.update(ODDS_RUN)
                .set(ODDS_RUN.DONE, done)
                .where(ODDS_RUN.JOB_ID.eq(job.value()))
                .execute();
    }

    /** The report takes the place of older ones of its plan. */
    void keep(JobId job, PlanId plan, Kept kept) {
        db.update(ODDS_RUN)
                .set(ODDS_RUN.DONE, kept.report().trials())
                .set(ODDS_RUN.BASIS, JSON.writeValueAsString(kept.basis()))
                .set(ODDS_RUN.REPORT, JSON.writeValueAsString(kept.report()))
                .set(ODDS_RUN.RECKONED_AT, kept.at())
                .where(ODDS_RUN.JOB_ID.eq(job.value()))
                .execute();
        db.deleteFrom(ODDS_RUN)
                .where(ODDS_RUN.PLAN_ID.eq(plan.value()), ODDS_RUN.JOB_ID.lt(job.value()))
                .execute();
    }

    List<JobId> underWay(PlanId plan) {
        return db.select(JOB.ID)
                .from(JOB)
                .join(ODDS_RUN)
                .on(ODDS_RUN.JOB_ID.eq(JOB.ID))
                .where(ODDS_RUN.PLAN_ID.eq(plan.value()), JOB.ENDED_AT.isNull())
                .fetch(row -> new JobId(row.value1()));
    }

    Optional<Run> newest(PlanId plan) {
        return db.select(ODDS_RUN, JOB)
                .from(ODDS_RUN)
                .join(JOB)
                .on(JOB.ID.eq(ODDS_RUN.JOB_ID))
                .where(ODDS_RUN.PLAN_ID.eq(plan.value()))
                .orderBy(ODDS_RUN.JOB_ID.desc())
                .limit(1)
                .fetchOptional(row -> new Run(row.value1(), row.value2()));
    }

    Optional<Kept> kept(PlanId plan) {
        return db.selectFrom(ODDS_RUN)
                .where(ODDS_RUN.PLAN_ID.eq(plan.value()), ODDS_RUN.REPORT.isNotNull())
                .orderBy(ODDS_RUN.JOB_ID.desc())
                .limit(1)
                .fetchOptional()
                .flatMap(OddsRows::read);
    }

    /** A report in the form of another version of this program is none: it is reckoned again within seconds. */
    private static Optional<Kept> read(OddsRunRecord row) {
        try {
            return Optional.of(new Kept(
                    JSON.readValue(Objects.requireNonNull(row.getReport()), RiskReport.class),
                    JSON.readValue(Objects.requireNonNull(row.getBasis()), Basis.class),
                    Objects.requireNonNull(row.getReckonedAt())));
        } catch (JacksonException otherForm) {
            LOG.warn(
                    "The odds of plan {} cannot be read any more: {}", row.getPlanId(), otherForm.getOriginalMessage());
            return Optional.empty();
        }
    }
}
