package drylap.progress;

import static drylap.persistence.jooq.Tables.OPENING;
import static drylap.persistence.jooq.Tables.STEP_MARK;

import drylap.kernel.Coded;
import drylap.kernel.CrewId;
import drylap.kernel.FolderId;
import drylap.kernel.OpeningId;
import drylap.kernel.PersonId;
import drylap.kernel.Reach;
import drylap.persistence.Within;
import drylap.persistence.jooq.tables.records.StepMarkRecord;
import drylap.security.Person;
import drylap.sites.Opening;
import java.time.Clock;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.jooq.DSLContext;
import org.springframework.stereotype.Service;

/** The log as a table. */
@Service
final class Marks {
    private final DSLContext db;
    private final Clock clock;

    Marks(DSLContext db, Clock clock) {
        this.db = db;
        this.clock = clock;
    }

    /**
     * Until the transaction ends nobody else adds to this opening's log or changes its method.
     *
     * @return whether its method is still that of the opening as it was read
     */
    boolean lock(FolderId folder, Opening opening) {
        return db
                .select(OPENING.METHOD)
                .from(OPENING)
                .where(OPENING.FOLDER_ID.eq(folder.value()))
                .and(OPENING.OPENING_.eq(opening.id().value()))
                .forNoKeyUpdate()
                .fetch()
                .stream()
                .anyMatch(row -> row.value1().equals(opening.method().code()));
    }

    Map<OpeningId, List<Mark>> of(FolderId folder, Reach reach) {
        return db.selectFrom(STEP_MARK)
                .where(STEP_MARK.FOLDER_ID.eq(folder.value()))
                .and(Within.reach(STEP_MARK.SITE, reach))
                .orderBy(STEP_MARK.ID)
                .fetchGroups(row -> new OpeningId(row.getOpening()), Marks::mark);
    }

    List<Mark> of(FolderId folder, OpeningId opening) {
        return db.selectFrom(STEP_MARK)
                .where(STEP_MARK.FOLDER_ID.eq(folder.value()))
                .and(STEP_MARK.OPENING.eq(opening.value()))
                .orderBy(STEP_MARK.ID)
                .fetch(Marks::mark);
    }

    /** False where the key is taken by another mark. */
    boolean add(Person who, Opening opening, MarkRequest request) {
        return db.insertInto(STEP_MARK)
                        .set(STEP_MARK.FOLDER_ID, request.folder().value())
                        .set(STEP_MARK.OPENING, request.opening().value())
                        .set(STEP_MARK.SITE, opening.facade().site().value())
                        .set(STEP_MARK.LINE, request.line())
                        .set(STEP_MARK.KIND, request.kind().code())
                        .set(STEP_MARK.PERSON_ID, who.id().value())
                        .set(STEP_MARK.PERSON, who.name())
                        .set(
                                STEP_MARK.CREW,
                                who.crew() == null ? null : who.crew().value())
                        .set(STEP_MARK.MARKED_AT, request.markedAt())
                        .set(STEP_MARK.RECEIVED_AT, clock.instant())
                        .set(STEP_MARK.MARK_KEY, request.key())
                        .set(STEP_MARK.NOTE, request.note())
                        .set(STEP_MARK.REASON, request.reason())
                        .set(STEP_MARK.PHOTOS, request.photos().toArray(UUID[]::new))
                        .onConflict(STEP_MARK.MARK_KEY)
                        .doNothing()
                        .execute()
                == 1;
    }

    Optional<Mark> byKey(MarkRequest request) {
        return db.selectFrom(STEP_MARK)
                .where(STEP_MARK.MARK_KEY.eq(request.key()))
                .and(STEP_MARK.FOLDER_ID.eq(request.folder().value()))
                .and(STEP_MARK.OPENING.eq(request.opening().value()))
                .and(STEP_MARK.LINE.eq(request.line()))
                .and(STEP_MARK.KIND.eq(request.kind().code()))
                .fetchOptional(Marks::mark);
    }

    private static Mark mark(StepMarkRecord row) {
        return new Mark(
                row.getId(),
                new OpeningId(row.getOpening()),
                row.getLine(),
                Coded.of(MarkKind.class, row.getKind()),
                new PersonId(row.getPersonId()),
                row.getPerson(),
                row.getCrew() == null ? null : new CrewId(row.getCrew()),
                row.getMarkedAt(),
                row.getReceivedAt(),
                row.getMarkKey(),
                row.getNote(),
                row.getReason(),
                Arrays.asList(row.getPhotos()));
    }
}
