package drylap.planning;

import static drylap.persistence.jooq.Tables.OPEN_WINDOW;
import static drylap.persistence.jooq.Tables.VISIT;

import drylap.kernel.Coded;
import drylap.kernel.CrewId;
import drylap.kernel.FacadeId;
import drylap.kernel.OpeningId;
import drylap.kernel.Reach;
import drylap.kernel.SiteId;
import drylap.kernel.Task;
import drylap.kernel.TimeWindow;
import drylap.persistence.TableCopy;
import drylap.persistence.Within;
import drylap.persistence.jooq.tables.records.OpenWindowRecord;
import drylap.persistence.jooq.tables.records.VisitRecord;
import java.util.ArrayList;
import java.util.List;
import org.jooq.DSLContext;
import org.springframework.stereotype.Service;

/** Who goes where and when, and the hours that were open for it: the dated parts of a stored plan. */
@Service
final class PlanSheets {
    private final DSLContext db;

    PlanSheets(DSLContext db) {
        this.db = db;
    }

    void save(PlanId plan, Plan made) {
        List<VisitRecord> visits = new ArrayList<>();
        for (Visit visit : made.visits()) visits.add(row(plan, visits.size(), visit));
        TableCopy.add(db, visits);
        List<OpenWindowRecord> windows = new ArrayList<>();
        for (OpenWindow window : made.openHours())
            windows.add(new OpenWindowRecord(
                    plan.value(),
                    windows.size(),
                    window.facade().site().value(),
                    window.facade().facade(),
                    window.task().code(),
                    window.when().from(),
                    window.when().until()));
        TableCopy.add(db, windows);
    }

    List<Visit> visits(PlanId plan, Reach reach) {
        return db.selectFrom(VISIT)
                .where(VISIT.PLAN_ID.eq(plan.value()), Within.reach(VISIT.SITE, reach))
                .orderBy(VISIT.ROW_NO)
                .fetch(PlanSheets::visit);
    }

    List<OpenWindow> openHours(PlanId plan, Reach reach) {
        return db.selectFrom(OPEN_WINDOW)
                .where(OPEN_WINDOW.PLAN_ID.eq(plan.value()), Within.reach(OPEN_WINDOW.SITE, reach))
                .orderBy(OPEN_WINDOW.ROW_NO)
                .fetch(row -> new OpenWindow(
                        new FacadeId(new SiteId(row.getSite()), row.getFacade()),
                        Coded.of(Task.class, row.getTask()),
                        new TimeWindow(row.getOpensAt(), row.getShutsAt())));
    }

    private static VisitRecord row(PlanId plan, int rowNo, Visit visit) {
        return new VisitRecord(
                plan.value(),
                rowNo,
                visit.crew().value(),
                visit.date(),
                visit.sequence(),
                visit.facade().site().value(),
                visit.facade().facade(),
                visit.level(),
                visit.opening().value(),
                visit.task().code(),
                visit.start(),
                visit.end());
    }

    private static Visit visit(VisitRecord row) {
        return new Visit(
                new CrewId(row.getCrew()),
                row.getDate(),
                row.getSequence(),
                new FacadeId(new SiteId(row.getSite()), row.getFacade()),
                row.getLevel(),
                new OpeningId(row.getOpening()),
                Coded.of(Task.class, row.getTask()),
                row.getStartsAt(),
                row.getEndsAt());
    }
}
