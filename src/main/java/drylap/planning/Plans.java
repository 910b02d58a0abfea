package drylap.planning;

import static drylap.persistence.jooq.Tables.PLAN;

import drylap.kernel.FolderId;
import drylap.persistence.jooq.tables.records.PlanRecord;
import java.time.Clock;
import java.util.Optional;
import org.jooq.DSLContext;
import org.springframework.stereotype.Service;
import org.springframework.transaction.support.TransactionTemplate;

/** The plans in the database. A stored plan is immutable; the newest of a folder is the one that counts. */
@Service
public final class Plans {
    private final DSLContext db;
    private final TransactionTemplate transaction;
    private final Clock clock;
    private final PlanSheets sheets;
    private final PlanRemarks remarks;

    Plans(DSLContext db, TransactionTemplate transaction, Clock clock, PlanSheets sheets, PlanRemarks remarks) {
        this.db = db;
        this.transaction = transaction;
        this.clock = clock;
        this.sheets = sheets;
        this.remarks = remarks;
    }

    /** Stores the plan, whole or not at all, as the newest of its folder. */
    public PlanId save(FolderId folder, Plan plan) {
        return transaction.execute(_ -> {
            PlanId id = open(folder, plan);
            sheets.save(id, plan);
            remarks.save(id, plan);
            return id;
        });
    }

    /** The newest plan of the folder, equal to the one that was saved. */
    public Optional<Plan> latest(FolderId folder) {
        return db.selectFrom(PLAN)
                .where(PLAN.FOLDER_ID.eq(folder.value()))
                .orderBy(PLAN.ID.desc())
                .limit(1)
                .fetchOptional()
                .map(this::plan);
    }

    private PlanId open(FolderId folder, Plan plan) {
        return new PlanId(db.insertInto(PLAN)
                .set(PLAN.FOLDER_ID, folder.value())
                .set(PLAN.MADE_AT, clock.instant())
                .set(PLAN.STARTS_AT, plan.start())
                .set(PLAN.HORIZON_END, plan.horizonEnd())
                .set(PLAN.HARD, plan.ledger().hard())
                .set(PLAN.MEDIUM, plan.ledger().medium())
                .set(PLAN.SOFT, plan.ledger().soft())
                .returning(PLAN.ID)
                .fetchSingle(PLAN.ID));
    }

    private Plan plan(PlanRecord row) {
        PlanId id = new PlanId(row.getId());
        return new Plan(
                row.getStartsAt(),
                row.getHorizonEnd(),
                sheets.visits(id),
                remarks.unplanned(id),
                remarks.coverNow(id),
                sheets.openHours(id),
                new Ledger(remarks.lines(id), row.getHard(), row.getMedium(), row.getSoft()));
    }
}
