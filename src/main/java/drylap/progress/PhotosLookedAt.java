package drylap.progress;

import static drylap.persistence.jooq.Tables.PHOTO;

import drylap.kernel.FolderId;
import drylap.kernel.SiteId;
import drylap.persistence.jooq.tables.records.PhotoRecord;
import drylap.pictures.BadPicture;
import drylap.pictures.Picture;
import drylap.pictures.Pictures;
import drylap.platform.FileStore;
import drylap.platform.RegularWork;
import java.time.Duration;
import java.util.Optional;
import org.jooq.DSLContext;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.stereotype.Service;
import org.springframework.transaction.support.TransactionTemplate;

/** Looks at photos that were kept before photos were looked at: takes out their place, measures them, makes their thumbnails. */
@Service
final class PhotosLookedAt implements RegularWork {
    private static final Logger LOG = LoggerFactory.getLogger(PhotosLookedAt.class);
    private static final int AT_A_TIME = 20;

    private final DSLContext db;
    private final TransactionTemplate transaction;
    private final FileStore files;
    private final PhotoPlaces places;

    PhotosLookedAt(DSLContext db, TransactionTemplate transaction, FileStore files, PhotoPlaces places) {
        this.db = db;
        this.transaction = transaction;
        this.files = files;
        this.places = places;
    }

    @Override
    public String name() {
        return "photos-looked-at";
    }

    @Override
    public Duration pause() {
        return Duration.ofSeconds(30);
    }

    @Override
    public void run() {
        db.selectFrom(PHOTO)
                .where(PHOTO.WIDTH_PX.isNull(), PHOTO.UNDECODABLE.isFalse())
                .orderBy(PHOTO.RECEIVED_AT)
                .limit(AT_A_TIME)
                .forEach(this::lookAt);
    }

    /** One whose bytes cannot be had now is left for later: they may be brought back. */
    private void lookAt(PhotoRecord row) {
        var bytes = files.get(row.getSha256());
        if (bytes.isEmpty()) LOG.error("The bytes of photo {} are missing: file {}", row.getId(), row.getSha256());
        else transaction.executeWithoutResult(_ -> write(row, picture(row, bytes.get())));
    }

    private Optional<Picture> picture(PhotoRecord row, byte[] bytes) {
        try {
            return Optional.of(
                    Pictures.lookAt(bytes, places.keptAt(new FolderId(row.getFolderId()), new SiteId(row.getSite()))));
        } catch (BadPicture bad) {
            LOG.warn("Photo {} stays as it came", row.getId(), bad);
            return Optional.empty();
        }
    }

    private void write(PhotoRecord row, Optional<Picture> picture) {
        var update = picture.map(seen -> db.update(PHOTO)
                        .set(PHOTO.SHA256, files.put(seen.bytes()))
                        .set(PHOTO.SIZE_BYTES, seen.bytes().length)
                        .set(PHOTO.THUMBNAIL_SHA256, files.put(seen.thumbnail()))
                        .set(PHOTO.WIDTH_PX, seen.widthPx())
                        .set(PHOTO.HEIGHT_PX, seen.heightPx()))
                .orElseGet(() -> db.update(PHOTO).set(PHOTO.UNDECODABLE, true));
        update.where(PHOTO.ID.eq(row.getId()), PHOTO.SHA256.eq(row.getSha256())).execute();
    }
}
