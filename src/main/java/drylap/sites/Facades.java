package drylap.sites;

import static drylap.persistence.jooq.Tables.FACADE;

import drylap.kernel.FacadeId;
import drylap.kernel.FolderId;
import drylap.kernel.Reach;
import drylap.kernel.SiteId;
import drylap.persistence.Within;
import drylap.persistence.jooq.tables.records.FacadeRecord;
import java.util.ArrayList;
import java.util.List;
import org.jooq.DSLContext;
import org.springframework.stereotype.Service;

/** The facades of each job folder, as stored; their sites are saved first. */
@Service
public final class Facades {
    private final DSLContext db;

    Facades(DSLContext db) {
        this.db = db;
    }

    public void saveAll(FolderId folder, List<Facade> facades) {
        List<FacadeRecord> rows = new ArrayList<>(facades.size());
        for (Facade facade : facades)
            rows.add(new FacadeRecord(
                    folder.value(),
                    facade.id().site().value(),
                    facade.id().facade(),
                    rows.size(),
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
