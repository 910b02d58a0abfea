package drylap.sites;

import static drylap.persistence.jooq.Tables.OPENING;
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
import org.jooq.impl.DSL;
import org.springframework.stereotype.Service;

/** The sites of each job folder, as stored. */
@Service
public final class Sites {
    private final DSLContext db;

    Sites(DSLContext db) {
        this.db = db;
    }

    public void saveAll(FolderId folder, List<Site> sites) {
        save(folder, sites, 0);
    }

    /** One more, behind those that are there. */
    public void add(FolderId folder, Site site) {
        save(folder, List.of(site), next(folder));
    }

    /** Name, address, place and clock as they are now. */
    public void change(FolderId folder, Site site) {
        db.update(SITE)
                .set(SITE.NAME, site.name())
                .set(SITE.LATITUDE, site.place().latitude())
                .set(SITE.LONGITUDE, site.place().longitude())
                .set(SITE.TIME_ZONE, site.zone().getId())
                .set(SITE.ADDRESS, site.address().below())
                .where(
                        SITE.FOLDER_ID.eq(folder.value()),
                        SITE.SITE_.eq(site.id().value()))
                .execute();
    }

    /** With its walls; a site with openings is left, since other things hang on those. */
    public boolean removeEmpty(FolderId folder, SiteId site) {
        return db.deleteFrom(SITE)
                        .where(SITE.FOLDER_ID.eq(folder.value()), SITE.SITE_.eq(site.value()))
                        .andNotExists(db.selectOne()
                                .from(OPENING)
                                .where(OPENING.FOLDER_ID.eq(SITE.FOLDER_ID), OPENING.SITE.eq(SITE.SITE_)))
                        .execute()
                == 1;
    }

    /** Whether any job folder has a site of this id: then it would be taken for the same place. */
    public boolean anywhere(SiteId site) {
        return db.fetchExists(SITE, SITE.SITE_.eq(site.value()));
    }

    private int next(FolderId folder) {
        return db.select(DSL.coalesce(DSL.max(SITE.ROW_NO), -1).plus(1))
                .from(SITE)
                .where(SITE.FOLDER_ID.eq(folder.value()))
                .fetchSingle()
                .value1();
    }

    private void save(FolderId folder, List<Site> sites, int firstRow) {
        List<SiteRecord> rows = new ArrayList<>(sites.size());
        for (Site site : sites)
            rows.add(new SiteRecord(
                    folder.value(),
                    site.id().value(),
                    firstRow + rows.size(),
                    site.name(),
                    site.place().latitude(),
                    site.place().longitude(),
                    site.zone().getId(),
                    site.terrain().code(),
                    site.address().below()));
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
                Coded.of(Terrain.class, row.getTerrain()),
                StreetAddress.read(row.getAddress()));
    }
}
