package drylap.progress;

import static drylap.persistence.jooq.Tables.PHOTO;
import static drylap.persistence.jooq.Tables.STEP_MARK;

import drylap.kernel.FolderId;
import org.jooq.DSLContext;
import org.springframework.stereotype.Service;

/** Takes the log and the photos of an invented job folder away; the database refuses it for any other. The bytes of photos follow within a day. */
@Service
public final class SampleLog {
    private final DSLContext db;

    SampleLog(DSLContext db) {
        this.db = db;
    }

    /** Joins the caller's transaction, which takes the folder away too. */
    public void remove(FolderId folder) {
        db.deleteFrom(STEP_MARK).where(STEP_MARK.FOLDER_ID.eq(folder.value())).execute();
        db.deleteFrom(PHOTO).where(PHOTO.FOLDER_ID.eq(folder.value())).execute();
    }
}
