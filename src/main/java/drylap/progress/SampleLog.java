package drylap.progress;

import static drylap.persistence.jooq.Tables.PHOTO;
import static drylap.persistence.jooq.Tables.STEP_MARK;

import drylap.kernel.FolderId;
import drylap.platform.FileStore;
import java.util.List;
import org.jooq.DSLContext;
import org.springframework.stereotype.Service;

/** Takes the log and the photos of an invented job folder away; the database refuses it for any other. */
@Service
public final class SampleLog {
    private final DSLContext db;
    private final FileStore files;

    SampleLog(DSLContext db, FileStore files) {
        this.db = db;
        this.files = files;
    }

    /** Joins the caller's transaction, which takes the folder away too. */
    public void remove(FolderId folder) {
        db.deleteFrom(STEP_MARK).where(STEP_MARK.FOLDER_ID.eq(folder.value())).execute();
        List<String> digests = db.selectDistinct(PHOTO.SHA256)
                .from(PHOTO)
                .where(PHOTO.FOLDER_ID.eq(folder.value()))
                .fetch(PHOTO.SHA256);
        db.deleteFrom(PHOTO).where(PHOTO.FOLDER_ID.eq(folder.value())).execute();
        digests.stream()
                .filter(digest -> !db.fetchExists(PHOTO, PHOTO.SHA256.eq(digest)))
                .forEach(files::remove);
    }
}
