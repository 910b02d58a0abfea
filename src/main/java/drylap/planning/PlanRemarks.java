package drylap.planning;

import static drylap.persistence.jooq.Tables.COVER_NOW;
import static drylap.persistence.jooq.Tables.LEDGER_LINE;
import static drylap.persistence.jooq.Tables.OPENING;
import static drylap.persistence.jooq.Tables.UNPLANNED_TASK;

import drylap.kernel.Coded;
import drylap.kernel.FolderId;
import drylap.kernel.OpeningId;
import drylap.kernel.Reach;
import drylap.kernel.Task;
import drylap.persistence.Within;
import drylap.persistence.jooq.tables.records.CoverNowRecord;
import drylap.persistence.jooq.tables.records.LedgerLineRecord;
import drylap.persistence.jooq.tables.records.UnplannedTaskRecord;
import java.util.ArrayList;
import java.util.List;
import org.jooq.DSLContext;
import org.jooq.Record1;
import org.jooq.Select;
import org.jooq.impl.DSL;
import org.springframework.stereotype.Service;

/** What a stored plan says about itself: what is left out and why, what to cover, what it costs. */
@Service
final class PlanRemarks {
    private final DSLContext db;

    PlanRemarks(DSLContext db) {
        this.db = db;
    }

    void save(PlanId plan, Plan made) {
        List<UnplannedTaskRecord> left = new ArrayList<>();
        for (UnplannedTask task : made.unplanned())
            left.add(new UnplannedTaskRecord(
                    plan.value(),
                    left.size(),
                    task.opening().value(),
                    task.task().code(),
                    task.reason().code(),
                    task.detail()));
        db.batchInsert(left).execute();
        saveCover(plan, made.coverNow());
        saveLedger(plan, made.ledger());
    }

    private void saveCover(PlanId plan, List<CoverNow> coverNow) {
        List<CoverNowRecord> rows = new ArrayList<>();
        for (CoverNow cover : coverNow)
            rows.add(new CoverNowRecord(
                    plan.value(),
                    rows.size(),
                    cover.opening().value(),
                    cover.openSince(),
                    cover.nextRain(),
                    cover.minutesToClose()));
        db.batchInsert(rows).execute();
    }

    private void saveLedger(PlanId plan, Ledger ledger) {
        List<LedgerLineRecord> rows = new ArrayList<>();
        for (Ledger.Line line : ledger.lines())
            rows.add(new LedgerLineRecord(
                    plan.value(), rows.size(), line.term().code(), line.amount(), line.weight(), line.cost()));
        db.batchInsert(rows).execute();
    }

    List<UnplannedTask> unplanned(PlanId plan, FolderId folder, Reach reach) {
        return db.selectFrom(UNPLANNED_TASK)
                .where(UNPLANNED_TASK.PLAN_ID.eq(plan.value()), UNPLANNED_TASK.OPENING.in(openings(folder, reach)))
                .orderBy(UNPLANNED_TASK.ROW_NO)
                .fetch(row -> new UnplannedTask(
                        new OpeningId(row.getOpening()),
                        Coded.of(Task.class, row.getTask()),
                        Coded.of(UnplannedReason.class, row.getReason()),
                        row.getDetail()));
    }

    List<CoverNow> coverNow(PlanId plan, FolderId folder, Reach reach) {
        return db.selectFrom(COVER_NOW)
                .where(COVER_NOW.PLAN_ID.eq(plan.value()), COVER_NOW.OPENING.in(openings(folder, reach)))
                .orderBy(COVER_NOW.ROW_NO)
                .fetch(row -> new CoverNow(
                        new OpeningId(row.getOpening()),
                        row.getOpenSince(),
                        row.getNextRain(),
                        row.getMinutesToClose()));
    }

    private Select<Record1<String>> openings(FolderId folder, Reach reach) {
        return DSL.select(OPENING.OPENING_)
                .from(OPENING)
                .where(OPENING.FOLDER_ID.eq(folder.value()), Within.reach(OPENING.SITE, reach));
    }

    List<Ledger.Line> lines(PlanId plan) {
        return db.selectFrom(LEDGER_LINE)
                .where(LEDGER_LINE.PLAN_ID.eq(plan.value()))
                .orderBy(LEDGER_LINE.ROW_NO)
                .fetch(row -> new Ledger.Line(
                        Coded.of(LedgerTerm.class, row.getTerm()), row.getAmount(), row.getWeight(), row.getCost()));
    }
}
