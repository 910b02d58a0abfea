package drylap.progress;

import static drylap.persistence.jooq.Tables.PHOTO;

import drylap.kernel.FolderId;
import drylap.kernel.OpeningId;
import drylap.persistence.Within;
import drylap.pictures.BadPicture;
import drylap.pictures.MediaType;
import drylap.pictures.Picture;
import drylap.pictures.Pictures;
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
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.springframework.stereotype.Service;
import org.springframework.transaction.support.TransactionTemplate;

/** The photos of openings, each seen only by those whose site it is. */
@Service
public final class Photos {
    public static final String TOPIC = "photo";
    public static final int MOST_BYTES = 8 * 1024 * 1024;

    private final DSLContext db;
    private final PhotoRows rows;
    private final FileStore files;
    private final PhotoPlaces places;
    private final OpeningStates states;
    private final News news;
    private final TransactionTemplate transaction;
    private final PhotosOfADay ofADay;

    Photos(
            DSLContext db,
            PhotoRows rows,
            FileStore files,
            PhotoPlaces places,
            OpeningStates states,
            News news,
            TransactionTemplate transaction,
            PhotosOfADay ofADay) {
        this.db = db;
        this.rows = rows;
        this.files = files;
        this.places = places;
        this.states = states;
        this.news = news;
        this.transaction = transaction;
        this.ofADay = ofADay;
    }

    /** A photo, or its small copy, with the bytes and what they are. */
    public record Content(Photo photo, MediaType type, byte[] bytes) {}

    public PhotoResult add(Person who, PhotoRequest request) {
        who.demand(Operation.ADD_PHOTO);
        var opening = states.openingFor(who, request.folder(), request.opening());
        if (request.content().length > MOST_BYTES)
            return new Refused(
                    Why.TOO_LARGE,
                    Saying.of(
                            "the photo has {0} MB; accepted: up to 8 MB",
                            "%.1f".formatted(request.content().length / 1024.0 / 1024.0)));
        var before = rows.sentBefore(request);
        if (before.isPresent()) return new AlreadyStored(before.get());
        var many = ofADay.against(who);
        if (many.isPresent()) return new Refused(Why.MANY_TODAY, many.get());
        try {
            boolean keepPlace = places.keptAt(request.folder(), opening.facade().site());
            return store(who, opening, request, Pictures.lookAt(request.content(), keepPlace));
        } catch (BadPicture bad) {
            return new Refused(bad.tooLarge() ? Why.TOO_LARGE : Why.NO_PHOTO, bad.saying());
        }
    }

    /** Oldest first. */
    public List<Photo> of(Person who, FolderId folder, OpeningId opening) {
        return of(who, folder, List.of(opening));
    }

    /** Oldest first. */
    public List<Photo> of(Person who, FolderId folder, Collection<OpeningId> openings) {
        return seen(
                who,
                PHOTO.FOLDER_ID
                        .eq(folder.value())
                        .and(PHOTO.OPENING.in(
                                openings.stream().map(OpeningId::value).toList())));
    }

    /** Empty where there is none, or where it belongs to a site that is not the person's. */
    public Optional<Content> content(Person who, UUID id) {
        return seen(who, PHOTO.ID.eq(id)).stream().findFirst().flatMap(this::whole);
    }

    /** A small upright copy, as JPEG; the photo itself where it has none. Empty as {@link #content}. */
    public Optional<Content> thumbnail(Person who, UUID id) {
        return seen(who, PHOTO.ID.eq(id)).stream()
                .findFirst()
                .flatMap(photo -> photo.looked()
                        .flatMap(looked -> files.get(looked.thumbnail()))
                        .map(bytes -> new Content(photo, MediaType.JPEG, bytes))
                        .or(() -> whole(photo)));
    }

    private List<Photo> seen(Person who, Condition which) {
        who.demand(Operation.SEE_PHOTO);
        return db.selectFrom(PHOTO)
                .where(which, Within.reach(PHOTO.SITE, who.reach()))
                .orderBy(PHOTO.TAKEN_AT, PHOTO.ID)
                .fetch(PhotoRows::photo);
    }

    private Optional<Content> whole(Photo photo) {
        return files.get(photo.sha256()).map(bytes -> new Content(photo, photo.type(), bytes));
    }

    private PhotoResult store(Person who, Opening opening, PhotoRequest request, Picture picture) {
        return transaction.execute(_ -> {
            if (!rows.insert(who, opening, request, picture)) return again(request);
            news.tell(new NewsItem(
                    TOPIC,
                    request.folder().value(),
                    opening.facade().site().value(),
                    opening.id().value()));
            return new Stored(rows.byId(request.id()).orElseThrow());
        });
    }

    /** The key is taken: by the same photo, sent twice at once, or by another. */
    private PhotoResult again(PhotoRequest request) {
        return rows.sentBefore(request)
                .<PhotoResult>map(AlreadyStored::new)
                .orElseGet(() -> new Refused(
                        Why.KEY_TAKEN, Saying.of("the key of this photo was used for another one: {0}", request.id())));
    }
}
