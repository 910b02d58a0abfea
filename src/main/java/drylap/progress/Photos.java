package drylap.progress;

import static drylap.persistence.jooq.Tables.PHOTO;

import drylap.kernel.Coded;
import drylap.kernel.FolderId;
import drylap.kernel.OpeningId;
import drylap.kernel.SiteId;
import drylap.persistence.Within;
import drylap.persistence.jooq.tables.records.PhotoRecord;
import drylap.platform.FileStore;
import drylap.platform.News;
import drylap.platform.NewsItem;
import drylap.progress.PhotoResult.AlreadyStored;
import drylap.progress.PhotoResult.Refused;
import drylap.progress.PhotoResult.Refused.Why;
import drylap.progress.PhotoResult.Stored;
import drylap.security.Operation;
import drylap.security.Person;
import drylap.sites.Opening;
import drylap.speech.Saying;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jooq.DSLContext;
import org.springframework.stereotype.Service;
import org.springframework.transaction.support.TransactionTemplate;

/** The photos of openings, each seen only by those whose site it is. */
@Service
public final class Photos {
    public static final String TOPIC = "photo";
    public static final int MOST_BYTES = 8 * 1024 * 1024;

    private final DSLContext db;
    private final FileStore files;
    private final OpeningStates states;
    private final News news;
    private final TransactionTemplate transaction;
    private final Clock clock;

    Photos(
            DSLContext db,
            FileStore files,
            OpeningStates states,
            News news,
            TransactionTemplate transaction,
            Clock clock) {
        this.db = db;
        this.files = files;
        this.states = states;
        this.news = news;
        this.transaction = transaction;
        this.clock = clock;
    }

    /** A photo with its bytes. */
    public record Content(Photo photo, byte[] bytes) {}

    public PhotoResult add(Person who, PhotoRequest request) {
        who.demand(Operation.ADD_PHOTO);
        var opening = states.openingFor(who, request.folder(), request.opening());
        if (request.content().length > MOST_BYTES)
            return new Refused(
                    Why.TOO_LARGE,
                    Saying.of(
                            "the photo has {0} MB; accepted: up to 8 MB",
                            "%.1f".formatted(request.content().length / 1024.0 / 1024.0)));
        return MediaType.of(request.content())
                .map(type -> store(who, opening, request, type))
                .orElseGet(() -> new Refused(
                        Why.NO_PHOTO, Saying.of("the file is no photo that is known; accepted: JPEG, PNG, WebP")));
    }

    /** Oldest first. */
    public List<Photo> of(Person who, FolderId folder, OpeningId opening) {
        who.demand(Operation.SEE_PHOTO);
        return db.selectFrom(PHOTO)
                .where(PHOTO.FOLDER_ID.eq(folder.value()))
                .and(PHOTO.OPENING.eq(opening.value()))
                .and(Within.reach(PHOTO.SITE, who.reach()))
                .orderBy(PHOTO.TAKEN_AT, PHOTO.ID)
                .fetch(Photos::photo);
    }

    /** Empty where there is none, or where it belongs to a site that is not the person's. */
    public Optional<Content> content(Person who, UUID id) {
        who.demand(Operation.SEE_PHOTO);
        return db.selectFrom(PHOTO)
                .where(PHOTO.ID.eq(id))
                .and(Within.reach(PHOTO.SITE, who.reach()))
                .fetchOptional(Photos::photo)
                .flatMap(photo -> files.get(photo.sha256()).map(bytes -> new Content(photo, bytes)));
    }

    private PhotoResult store(Person who, Opening opening, PhotoRequest request, MediaType type) {
        return transaction.execute(_ -> {
            String digest = files.put(request.content());
            if (!insert(who, opening, request, type, digest)) return sentBefore(request, digest);
            news.tell(new NewsItem(
                    TOPIC,
                    request.folder().value(),
                    opening.facade().site().value(),
                    opening.id().value()));
            return new Stored(byId(request.id()).orElseThrow());
        });
    }

    private boolean insert(Person who, Opening opening, PhotoRequest request, MediaType type, String digest) {
        return db.insertInto(PHOTO)
                        .set(PHOTO.ID, request.id())
                        .set(PHOTO.FOLDER_ID, request.folder().value())
                        .set(PHOTO.OPENING, opening.id().value())
                        .set(PHOTO.SITE, opening.facade().site().value())
                        .set(PHOTO.PERSON_ID, who.id().value())
                        .set(PHOTO.PERSON, who.name())
                        .set(PHOTO.TAKEN_AT, request.takenAt())
                        .set(PHOTO.RECEIVED_AT, clock.instant())
                        .set(PHOTO.SHA256, digest)
                        .set(PHOTO.MEDIA_TYPE, type.code())
                        .set(PHOTO.SIZE_BYTES, request.content().length)
                        .onConflict(PHOTO.ID)
                        .doNothing()
                        .execute()
                == 1;
    }

    private PhotoResult sentBefore(PhotoRequest request, String digest) {
        return db.selectFrom(PHOTO)
                .where(PHOTO.ID.eq(request.id()))
                .and(PHOTO.FOLDER_ID.eq(request.folder().value()))
                .and(PHOTO.OPENING.eq(request.opening().value()))
                .and(PHOTO.SHA256.eq(digest))
                .fetchOptional(Photos::photo)
                .<PhotoResult>map(AlreadyStored::new)
                .orElseGet(() -> new Refused(
                        Why.KEY_TAKEN, Saying.of("the key of this photo was used for another one: {0}", request.id())));
    }

    private Optional<Photo> byId(UUID id) {
        return db.selectFrom(PHOTO).where(PHOTO.ID.eq(id)).fetchOptional(Photos::photo);
    }

    private static Photo photo(PhotoRecord row) {
        return new Photo(
                row.getId(),
                new OpeningId(row.getOpening()),
                new SiteId(row.getSite()),
                row.getPerson(),
                row.getTakenAt(),
                Coded.of(MediaType.class, row.getMediaType()),
                row.getSizeBytes(),
                row.getSha256());
    }
}
