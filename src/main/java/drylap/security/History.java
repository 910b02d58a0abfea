package drylap.security;

import static drylap.persistence.jooq.Tables.CHANGE_LOG;

import drylap.kernel.SiteId;
import drylap.persistence.Within;
import java.time.Clock;
import java.util.List;
import org.jooq.DSLContext;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;

/** Who changed what; lines are only ever added, by whoever makes the change and in its transaction. */
@Service
public final class History {
    private final DSLContext db;
    private final Clock clock;

    History(DSLContext db, Clock clock) {
        this.db = db;
        this.clock = clock;
    }

    public void note(Person who, @Nullable SiteId site, String what) {
        db.insertInto(CHANGE_LOG)
                .set(CHANGE_LOG.AT, clock.instant())
                .set(CHANGE_LOG.PERSON_ID, who.id().value())
                .set(CHANGE_LOG.PERSON, who.name())
                .set(CHANGE_LOG.SITE, site == null ? null : site.value())
                .set(CHANGE_LOG.WHAT, what)
                .execute();
    }

    /** Whether nobody ever changed anything: the database is new. */
    public boolean isEmpty() {
        return !db.fetchExists(CHANGE_LOG);
    }

    /** Newest first: what belongs to no site, and what belongs to the asker's. */
    public List<Change> seenBy(Person who, int atMost) {
        who.demand(Operation.SEE_HISTORY);
        return db.selectFrom(CHANGE_LOG)
                .where(CHANGE_LOG.SITE.isNull().or(Within.reach(CHANGE_LOG.SITE, who.reach())))
                .orderBy(CHANGE_LOG.ID.desc())
                .limit(atMost)
                .fetch(row -> new Change(
                        row.getId(),
                        row.getAt(),
                        row.getPerson(),
                        row.getSite() == null ? null : new SiteId(row.getSite()),
                        row.getWhat()));
    }
}
