package drylap.planning;

import static drylap.persistence.jooq.Tables.PUBLISHED_VISIT;

import drylap.kernel.Coded;
import drylap.kernel.CrewId;
import drylap.kernel.FacadeId;
import drylap.kernel.FolderId;
import drylap.kernel.OpeningId;
import drylap.kernel.Reach;
import drylap.kernel.SiteId;
import drylap.kernel.Task;
import drylap.persistence.Within;
import drylap.persistence.jooq.tables.records.PublishedVisitRecord;
import java.util.ArrayList;
import java.util.List;
import org.jooq.DSLContext;
import org.springframework.stereotype.Service;

/** The published plan that each job folder brings along, as stored; crews and openings are saved first. */
@Service
final class PublishedVisits {
    private final DSLContext db;

    PublishedVisits(DSLContext db) {
        this.db = db;
    }

    void saveAll(FolderId folder, List<PublishedVisit> published) {
        List<PublishedVisitRecord> rows = new ArrayList<>(published.size());
        for (PublishedVisit visit : published) rows.add(row(folder, rows.size(), visit.visit(), visit.pinned()));
        db.batchInsert(rows).execute();
    }

    List<PublishedVisit> within(FolderId folder, Reach reach) {
        return db.selectFrom(PUBLISHED_VISIT)
                .where(PUBLISHED_VISIT.FOLDER_ID.eq(folder.value()))
                .and(Within.reach(PUBLISHED_VISIT.SITE, reach))
                .orderBy(PUBLISHED_VISIT.ROW_NO)
                .fetch(row -> new PublishedVisit(visit(row), row.getPinned()));
    }

    private static PublishedVisitRecord row(FolderId folder, int rowNo, Visit visit, boolean pinned) {
        return new PublishedVisitRecord(
                folder.value(),
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
                visit.end(),
                pinned);
    }

    private static Visit visit(PublishedVisitRecord row) {
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
