package drylap.handoff;

import static drylap.persistence.jooq.Tables.HANDOFF_ACT;
import static drylap.persistence.jooq.Tables.HANDOFF_ENTRY;
import static drylap.persistence.jooq.Tables.HANDOFF_PHOTO;

import drylap.kernel.FolderId;
import drylap.platform.News;
import drylap.platform.NewsItem;
import drylap.security.Person;
import java.time.Clock;
import java.util.Optional;
import java.util.UUID;
import org.jooq.DSLContext;
import org.springframework.stereotype.Service;

/** Writes acts down; everything else reads. */
@Service
final class Acts {
    static final String TOPIC = "handoff";

    private final DSLContext db;
    private final Clock clock;
    private final News news;

    Acts(DSLContext db, Clock clock, News news) {
        this.db = db;
        this.clock = clock;
        this.news = news;
    }

    /** The act that was already written with this key: the same act was sent twice. */
    Optional<Long> written(UUID key) {
        return db.select(HANDOFF_ACT.ID)
                .from(HANDOFF_ACT)
                .where(HANDOFF_ACT.ACT_KEY.eq(key))
                .fetchOptional(HANDOFF_ACT.ID);
    }

    long write(Person who, NewAct act) {
        long id = head(who, act);
        for (var entry : act.entries()) write(id, act.folder(), entry);
        for (var photo : act.photos())
            db.insertInto(HANDOFF_PHOTO)
                    .set(HANDOFF_PHOTO.ACT_ID, id)
                    .set(HANDOFF_PHOTO.PHOTO_ID, photo)
                    .execute();
        act.entries()
                .forEach(entry -> news.tell(new NewsItem(
                        TOPIC,
                        act.folder().value(),
                        act.site().value(),
                        entry.opening().value())));
        return id;
    }

    private long head(Person who, NewAct act) {
        var test = act.test();
        return db.insertInto(HANDOFF_ACT)
                .set(HANDOFF_ACT.ACT_KEY, act.key())
                .set(HANDOFF_ACT.FOLDER_ID, act.folder().value())
                .set(HANDOFF_ACT.SITE, act.site().value())
                .set(HANDOFF_ACT.KIND, act.kind().code())
                .set(HANDOFF_ACT.HOLD_POINT, Codes.of(act.holdPoint()))
                .set(HANDOFF_ACT.PERSON_ID, who.id().value())
                .set(HANDOFF_ACT.PERSON, who.name())
                .set(HANDOFF_ACT.ROLE, who.role().words())
                .set(HANDOFF_ACT.CREW, who.crew() == null ? null : who.crew().value())
                .set(HANDOFF_ACT.AT, clock.instant())
                .set(HANDOFF_ACT.REASON, Codes.of(act.reason()))
                .set(HANDOFF_ACT.NOTE, act.note())
                .set(
                        HANDOFF_ACT.LEAK_DEFINITION,
                        test == null ? null : test.leak().code())
                .set(HANDOFF_ACT.PRESSURE_PA, test == null ? null : test.pressurePa())
                .set(HANDOFF_ACT.MINUTES, test == null ? null : test.minutes())
                .returning(HANDOFF_ACT.ID)
                .fetchSingle(HANDOFF_ACT.ID);
    }

    private void write(long act, FolderId folder, HandoffAct.Entry entry) {
        db.insertInto(HANDOFF_ENTRY)
                .set(HANDOFF_ENTRY.ACT_ID, act)
                .set(HANDOFF_ENTRY.FOLDER_ID, folder.value())
                .set(HANDOFF_ENTRY.OPENING, entry.opening().value())
                .set(HANDOFF_ENTRY.LAST_MARK, entry.lastMark())
                .set(HANDOFF_ENTRY.RATING, entry.rating())
                .set(HANDOFF_ENTRY.STATE, entry.state())
                .execute();
    }
}
