package drylap.sites;

import static drylap.persistence.jooq.Tables.SITE;

import drylap.kernel.Coded;
import drylap.kernel.FolderId;
import drylap.kernel.GeoPoint;
import drylap.kernel.Reach;
import drylap.kernel.SiteId;
import drylap.persistence.Within;
import drylap.persistence.jooq.tables.records.SiteRecord;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jooq.DSLContext;
import org.springframework.stereotype.Service;

/** The sites of each job folder, as stored. */
@Service
public final class Sites {
    private final DSLContext db;

    Sites(DSLContext db) {
        this.db = db;
    }

    public void saveAll(FolderId folder, List<Site> sites) {
        List<SiteRecord> rows = new ArrayList<>(sites.size());
        for (Site site : sites)
            rows.add(new SiteRecord(
                    folder.value(),
                    site.id().value(),
                    rows.size(),
                    site.name(),
                    site.place().latitude(),
                    site.place().longitude(),
                    site.zone().getId(),
                    site.terrain().code()));
        db.batchInsert(rows).execute();
    }

    public List<Site> of(FolderId folder) {
        return within(folder, Reach.EVERYWHERE);
    }

    /** Those within reach, in the folder's order. */
    public List<Site> within(FolderId folder, Reach reach) {
        return db.selectFrom(SITE)
                .where(SITE.FOLDER_ID.eq(folder.value()))
                .and(Within.reach(SITE.SITE_, reach))
                .orderBy(SITE.ROW_NO)
                .fetch(Sites::site);
    }

    /** As the newest job folder with it tells it. */
    public Optional<Site> newest(SiteId site) {
        return db.selectFrom(SITE)
                .where(SITE.SITE_.eq(site.value()))
                .orderBy(SITE.FOLDER_ID.desc())
                .limit(1)
                .fetchOptional(Sites::site);
    }

    private static Site site(SiteRecord row) {
        return new Site(
                new SiteId(row.getSite()),
                row.getName(),
                new GeoPoint(row.getLatitude(), row.getLongitude()),
                ZoneId.of(row.getTimeZone()),
                Coded.of(Terrain.class, row.getTerrain()));
    }
}
