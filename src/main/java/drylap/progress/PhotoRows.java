package drylap.progress;

import static drylap.persistence.jooq.Tables.PHOTO;

import drylap.kernel.Coded;
import drylap.kernel.OpeningId;
import drylap.kernel.SiteId;
import drylap.persistence.jooq.tables.records.PhotoRecord;
import drylap.pictures.MediaType;
import drylap.pictures.Picture;
import drylap.platform.FileStore;
import drylap.security.Person;
import drylap.sites.Opening;
import java.time.Clock;
import java.time.Instant;
import java.util.Optional;
import java.util.UUID;
import org.jooq.DSLContext;
import org.springframework.stereotype.Service;

/** The rows of photos; whoever asks for one has been asked for their rights. */
@Service
final class PhotoRows {
    private final DSLContext db;
    private final FileStore files;
    private final Clock clock;

    PhotoRows(DSLContext db, FileStore files, Clock clock) {
        this.db = db;
        this.files = files;
        this.clock = clock;
    }

    /** Joins the caller's transaction; false where the key was used before. */
    boolean insert(Person who, Opening opening, PhotoRequest request, Picture picture) {
        return db.insertInto(PHOTO)
                        .set(PHOTO.ID, request.id())
                        .set(PHOTO.FOLDER_ID, request.folder().value())
                        .set(PHOTO.OPENING, opening.id().value())
                        .set(PHOTO.SITE, opening.facade().site().value())
                        .set(PHOTO.PERSON_ID, who.id().value())
                        .set(PHOTO.PERSON, who.name())
                        .set(PHOTO.TAKEN_AT, request.takenAt())
                        .set(PHOTO.RECEIVED_AT, clock.instant())
                        .set(PHOTO.SENT_SHA256, FileStore.digest(request.content()))
                        .set(PHOTO.SHA256, files.put(picture.bytes()))
                        .set(PHOTO.THUMBNAIL_SHA256, files.put(picture.thumbnail()))
                        .set(PHOTO.WIDTH_PX, picture.widthPx())
                        .set(PHOTO.HEIGHT_PX, picture.heightPx())
                        .set(PHOTO.MEDIA_TYPE, picture.type().code())
                        .set(PHOTO.SIZE_BYTES, picture.bytes().length)
                        .onConflict(PHOTO.ID)
                        .doNothing()
                        .execute()
                == 1;
    }

    /** The photo that came with this key and these bytes before, whatever was taken out of them since. */
    Optional<Photo> sentBefore(PhotoRequest request) {
        return db.selectFrom(PHOTO)
                .where(PHOTO.ID.eq(request.id()))
                .and(PHOTO.FOLDER_ID.eq(request.folder().value()))
                .and(PHOTO.OPENING.eq(request.opening().value()))
                .and(PHOTO.SENT_SHA256.eq(FileStore.digest(request.content())))
                .fetchOptional(PhotoRows::photo);
    }

    int receivedFrom(Person who, Instant since) {
        return db.fetchCount(PHOTO, PHOTO.PERSON_ID.eq(who.id().value()), PHOTO.RECEIVED_AT.gt(since));
    }

    Optional<Photo> byId(UUID id) {
        return db.selectFrom(PHOTO).where(PHOTO.ID.eq(id)).fetchOptional(PhotoRows::photo);
    }

    static Photo photo(PhotoRecord row) {
        return new Photo(
                row.getId(),
                new OpeningId(row.getOpening()),
                new SiteId(row.getSite()),
                row.getPerson(),
                row.getTakenAt(),
                Coded.of(MediaType.class, row.getMediaType()),
                row.getSizeBytes(),
                row.getSha256(),
                Optional.ofNullable(row.getThumbnailSha256())
                        .map(small -> new Photo.Looked(row.getWidthPx(), row.getHeightPx(), small)));
    }
}
