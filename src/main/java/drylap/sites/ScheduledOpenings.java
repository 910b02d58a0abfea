package drylap.sites;

import static drylap.persistence.jooq.Tables.OPENING_CHANGE;
import static drylap.persistence.jooq.Tables.OPENING_NOTE;
import static drylap.persistence.jooq.Tables.WINDOW_SCHEDULE;

import drylap.kernel.FolderId;
import drylap.kernel.OpeningId;
import drylap.kernel.PersonId;
import drylap.kernel.Reach;
import drylap.kernel.SiteId;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jooq.DSLContext;
import org.jooq.impl.DSL;
import org.springframework.stereotype.Service;

/** What window schedules added to a folder's openings and changed of them. Whoever calls has the transaction and the right. */
@Service
public final class ScheduledOpenings {
    private final DSLContext db;
    private final Openings openings;

    ScheduledOpenings(DSLContext db, Openings openings) {
        this.db = db;
        this.openings = openings;
    }

    /** @param person who takes it in, by number and name */
    public record Taking(FolderId folder, SiteId site, String file, PersonId person, String name, Instant at) {}

    /**
     * Stores all of it.
     *
     * @param was how the changed openings stood, in their order
     */
    public long take(Taking taking, List<Opening> added, List<Opening> was, List<Opening> changed) {
        long id = schedule(taking, added.size(), changed.size());
        openings.addAll(taking.folder(), added);
        openings.changeAll(taking.folder(), changed);
        db.batch(added.stream()
                        .map(opening -> db.insertInto(OPENING_CHANGE)
                                .set(OPENING_CHANGE.SCHEDULE_ID, id)
                                .set(OPENING_CHANGE.FOLDER_ID, taking.folder().value())
                                .set(OPENING_CHANGE.OPENING, opening.id().value()))
                        .toList())
                .execute();
        db.batch(was.stream()
                        .map(opening -> before(id, taking.folder(), opening))
                        .toList())
                .execute();
        return id;
    }

    private long schedule(Taking taking, int added, int changed) {
        return db.insertInto(WINDOW_SCHEDULE)
                .set(WINDOW_SCHEDULE.FOLDER_ID, taking.folder().value())
                .set(WINDOW_SCHEDULE.SITE, taking.site().value())
                .set(WINDOW_SCHEDULE.FILE, taking.file())
                .set(WINDOW_SCHEDULE.ADDED, added)
                .set(WINDOW_SCHEDULE.CHANGED, changed)
                .set(WINDOW_SCHEDULE.PERSON_ID, taking.person().value())
                .set(WINDOW_SCHEDULE.PERSON, taking.name())
                .set(WINDOW_SCHEDULE.AT, taking.at())
                .returning(WINDOW_SCHEDULE.ID)
                .fetchSingle(WINDOW_SCHEDULE.ID);
    }

    private org.jooq.Query before(long schedule, FolderId folder, Opening was) {
        return db.insertInto(OPENING_CHANGE)
                .set(OPENING_CHANGE.SCHEDULE_ID, schedule)
                .set(OPENING_CHANGE.FOLDER_ID, folder.value())
                .set(OPENING_CHANGE.OPENING, was.id().value())
                .set(OPENING_CHANGE.WAS_FACADE, was.facade().facade())
                .set(OPENING_CHANGE.WAS_LEVEL, was.level())
                .set(OPENING_CHANGE.WAS_WIDTH_MM, was.widthMm())
                .set(OPENING_CHANGE.WAS_HEIGHT_MM, was.heightMm())
                .set(OPENING_CHANGE.WAS_FRAME, was.frame().code())
                .set(OPENING_CHANGE.WAS_METHOD, was.method().code());
    }

    /** What the newest schedule says of each. */
    public void note(FolderId folder, Map<OpeningId, OpeningNote> notes) {
        db.batch(notes.entrySet().stream()
                        .map(entry -> note(folder, entry.getKey(), entry.getValue()))
                        .toList())
                .execute();
    }

    private org.jooq.Query note(FolderId folder, OpeningId opening, OpeningNote note) {
        var row = db.newRecord(OPENING_NOTE);
        row.setFolderId(folder.value());
        row.setOpening(opening.value());
        row.setMark(note.mark());
        row.setSillHeightMm(note.sillHeightMm());
        row.setXMm(note.xMm());
        row.setHeadDetail(note.headDetail());
        row.setJambDetail(note.jambDetail());
        row.setSillDetail(note.sillDetail());
        row.setRemarks(note.remarks());
        return db.insertInto(OPENING_NOTE)
                .set(row)
                .onConflict(OPENING_NOTE.FOLDER_ID, OPENING_NOTE.OPENING)
                .doUpdate()
                .set(row);
    }

    /** Empty where no schedule ever named it, or it stands at a site outside the reach. */
    public Optional<OpeningNote> note(FolderId folder, OpeningId opening, Reach reach) {
        if (openings.find(folder, opening, reach).isEmpty()) return Optional.empty();
        return db.selectFrom(OPENING_NOTE)
                .where(OPENING_NOTE.FOLDER_ID.eq(folder.value()), OPENING_NOTE.OPENING.eq(opening.value()))
                .fetchOptional(row -> new OpeningNote(
                        row.getMark(),
                        row.getSillHeightMm(),
                        row.getXMm(),
                        row.getHeadDetail(),
                        row.getJambDetail(),
                        row.getSillDetail(),
                        row.getRemarks()));
    }

    /** The number of the folder's newest schedule, 0 for none: a newer one says that what was read of its openings is old. */
    public long newest(FolderId folder) {
        Long newest = db.select(DSL.max(WINDOW_SCHEDULE.ID))
                .from(WINDOW_SCHEDULE)
                .where(WINDOW_SCHEDULE.FOLDER_ID.eq(folder.value()))
                .fetchSingle()
                .value1();
        return newest == null ? 0 : newest;
    }
}
