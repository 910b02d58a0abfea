package drylap.progress;

import static drylap.persistence.jooq.Tables.SITE_PHOTO_PLACE;

import drylap.kernel.FolderId;
import drylap.kernel.SiteId;
import drylap.security.History;
import drylap.security.Operation;
import drylap.security.Person;
import org.jooq.DSLContext;
import org.springframework.stereotype.Service;
import org.springframework.transaction.support.TransactionTemplate;

/** Whether photos of a site keep what the camera wrote about where and when they were taken; usually not. */
@Service
public final class PhotoPlaces {
    private final DSLContext db;
    private final TransactionTemplate transaction;
    private final History history;

    PhotoPlaces(DSLContext db, TransactionTemplate transaction, History history) {
        this.db = db;
        this.transaction = transaction;
        this.history = history;
    }

    public boolean keptAt(FolderId folder, SiteId site) {
        return db.fetchExists(
                SITE_PHOTO_PLACE,
                SITE_PHOTO_PLACE.FOLDER_ID.eq(folder.value()),
                SITE_PHOTO_PLACE.SITE.eq(site.value()),
                SITE_PHOTO_PLACE.KEPT.isTrue());
    }

    /** Counts for photos that come from now on: what was taken out of earlier ones is gone. */
    public void keep(Person who, FolderId folder, SiteId site, boolean kept) {
        who.demand(Operation.CHANGE_RULES, site);
        transaction.executeWithoutResult(_ -> {
            db.insertInto(SITE_PHOTO_PLACE)
                    .set(SITE_PHOTO_PLACE.FOLDER_ID, folder.value())
                    .set(SITE_PHOTO_PLACE.SITE, site.value())
                    .set(SITE_PHOTO_PLACE.KEPT, kept)
                    .onConflict(SITE_PHOTO_PLACE.FOLDER_ID, SITE_PHOTO_PLACE.SITE)
                    .doUpdate()
                    .set(SITE_PHOTO_PLACE.KEPT, kept)
                    .execute();
            history.note(who, site, kept ? "new photos keep their place" : "new photos lose their place");
        });
    }
}
