package drylap.sites;

import static drylap.persistence.jooq.Tables.FACADE;
import static drylap.persistence.jooq.Tables.OPENING;

import drylap.kernel.FacadeId;
import drylap.kernel.FolderId;
import drylap.kernel.Reach;
import drylap.kernel.SiteId;
import drylap.persistence.Within;
import drylap.persistence.jooq.tables.records.FacadeRecord;
import java.util.ArrayList;
import java.util.List;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.impl.DSL;
import org.springframework.stereotype.Service;

/** The facades of each job folder, as stored; their sites are saved first. */
@Service
public final class Facades {
    private final DSLContext db;

    Facades(DSLContext db) {
        this.db = db;
    }

    public void saveAll(FolderId folder, List<Facade> facades) {
        save(folder, facades, 0);
    }

    /** More of them, behind those that are there. */
    public void add(FolderId folder, List<Facade> facades) {
        int next = db.select(DSL.coalesce(DSL.max(FACADE.ROW_NO), -1).plus(1))
                .from(FACADE)
                .where(FACADE.FOLDER_ID.eq(folder.value()))
                .fetchSingle()
                .value1();
        save(folder, facades, next);
    }

    /** Lets a wall face another way. */
    public void turn(FolderId folder, FacadeId facade, double azimuthDeg) {
        db.update(FACADE)
                .set(FACADE.AZIMUTH_DEG, azimuthDeg)
                .where(is(folder, facade))
                .execute();
    }

    /** A wall with openings is left, since other things hang on those. */
    public boolean removeEmpty(FolderId folder, FacadeId facade) {
        return db.deleteFrom(FACADE)
                        .where(is(folder, facade))
                        .andNotExists(db.selectOne()
                                .from(OPENING)
                                .where(
                                        OPENING.FOLDER_ID.eq(FACADE.FOLDER_ID),
                                        OPENING.SITE.eq(FACADE.SITE),
                                        OPENING.FACADE.eq(FACADE.FACADE_)))
                        .execute()
                == 1;
    }

    private static Condition is(FolderId folder, FacadeId facade) {
        return FACADE.FOLDER_ID
                .eq(folder.value())
                .and(FACADE.SITE.eq(facade.site().value()))
                .and(FACADE.FACADE_.eq(facade.facade()));
    }

    private void save(FolderId folder, List<Facade> facades, int firstRow) {
        List<FacadeRecord> rows = new ArrayList<>(facades.size());
        for (Facade facade : facades)
            rows.add(new FacadeRecord(
                    folder.value(),
                    facade.id().site().value(),
                    facade.id().facade(),
                    firstRow + rows.size(),
                    facade.azimuthDeg(),
                    facade.handoverDue()));
        db.batchInsert(rows).execute();
    }

    public List<Facade> of(FolderId folder) {
        return within(folder, Reach.EVERYWHERE);
    }

    /** Those within reach, in the folder's order. */
    public List<Facade> within(FolderId folder, Reach reach) {
        return db.selectFrom(FACADE)
                .where(FACADE.FOLDER_ID.eq(folder.value()))
                .and(Within.reach(FACADE.SITE, reach))
                .orderBy(FACADE.ROW_NO)
                .fetch(row -> new Facade(
                        new FacadeId(new SiteId(row.getSite()), row.getFacade()),
                        row.getAzimuthDeg(),
                        row.getHandoverDue()));
    }
}
