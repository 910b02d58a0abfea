package drylap.handoff;

import static drylap.persistence.jooq.Tables.CREW_DAY_BOOKING;

import drylap.kernel.CrewId;
import drylap.kernel.FolderId;
import drylap.kernel.SiteId;
import drylap.persistence.Within;
import drylap.platform.News;
import drylap.platform.NewsItem;
import drylap.security.History;
import drylap.security.Operation;
import drylap.security.Person;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import org.jooq.DSLContext;
import org.springframework.stereotype.Service;
import org.springframework.transaction.support.TransactionTemplate;

/** Days on which the follow-on trade says that it will come. They bind nobody; the scheduler sees them beside the plan. */
@Service
public final class Bookings {
    /** A day that a crew is to be at a site. */
    public record Booking(long id, SiteId site, CrewId crew, LocalDate date, String note, String by) {}

    private final DSLContext db;
    private final TransactionTemplate transaction;
    private final Clock clock;
    private final News news;
    private final History history;

    Bookings(DSLContext db, TransactionTemplate transaction, Clock clock, News news, History history) {
        this.db = db;
        this.transaction = transaction;
        this.clock = clock;
        this.news = news;
        this.history = history;
    }

    /** Books a day for the person's own crew; a day that is booked already stays as it is. */
    public void book(Person who, FolderId folder, SiteId site, LocalDate date, String note) {
        who.demand(Operation.BOOK_CREW_DAY, site);
        CrewId crew = crewOf(who);
        transaction.executeWithoutResult(_ -> {
            int added = db.insertInto(CREW_DAY_BOOKING)
                    .set(CREW_DAY_BOOKING.FOLDER_ID, folder.value())
                    .set(CREW_DAY_BOOKING.SITE, site.value())
                    .set(CREW_DAY_BOOKING.CREW, crew.value())
                    .set(CREW_DAY_BOOKING.DATE, date)
                    .set(CREW_DAY_BOOKING.NOTE, note.strip())
                    .set(CREW_DAY_BOOKING.PERSON_ID, who.id().value())
                    .set(CREW_DAY_BOOKING.PERSON, who.name())
                    .set(CREW_DAY_BOOKING.AT, clock.instant())
                    .onConflictDoNothing()
                    .execute();
            if (added > 0) say(who, folder, site, "booked %s for crew %s".formatted(date, crew.value()));
        });
    }

    /** Takes back a day that the person's own crew booked. */
    public void withdraw(Person who, FolderId folder, SiteId site, LocalDate date) {
        who.demand(Operation.BOOK_CREW_DAY, site);
        CrewId crew = crewOf(who);
        transaction.executeWithoutResult(_ -> {
            int gone = db.update(CREW_DAY_BOOKING)
                    .set(CREW_DAY_BOOKING.WITHDRAWN_AT, clock.instant())
                    .set(CREW_DAY_BOOKING.WITHDRAWN_BY, who.name())
                    .where(
                            CREW_DAY_BOOKING.FOLDER_ID.eq(folder.value()),
                            CREW_DAY_BOOKING.SITE.eq(site.value()),
                            CREW_DAY_BOOKING.CREW.eq(crew.value()),
                            CREW_DAY_BOOKING.DATE.eq(date),
                            CREW_DAY_BOOKING.WITHDRAWN_AT.isNull())
                    .execute();
            if (gone > 0) say(who, folder, site, "took back %s for crew %s".formatted(date, crew.value()));
        });
    }

    /** The days booked at the person's sites, in order. */
    public List<Booking> of(Person who, FolderId folder) {
        if (!who.may(Operation.SEE_APRONS)) who.demand(Operation.SEE_WEEK_SHEET);
        return db.selectFrom(CREW_DAY_BOOKING)
                .where(
                        CREW_DAY_BOOKING.FOLDER_ID.eq(folder.value()),
                        CREW_DAY_BOOKING.WITHDRAWN_AT.isNull(),
                        Within.reach(CREW_DAY_BOOKING.SITE, who.reach()))
                .orderBy(CREW_DAY_BOOKING.DATE, CREW_DAY_BOOKING.SITE, CREW_DAY_BOOKING.CREW)
                .fetch(row -> new Booking(
                        row.getId(),
                        new SiteId(row.getSite()),
                        new CrewId(row.getCrew()),
                        row.getDate(),
                        row.getNote(),
                        row.getPerson()));
    }

    private void say(Person who, FolderId folder, SiteId site, String what) {
        history.note(who, site, what);
        news.tell(new NewsItem(Acts.TOPIC, folder.value(), site.value(), ""));
    }

    private static CrewId crewOf(Person who) {
        CrewId crew = who.crew();
        if (crew == null) throw new IllegalStateException(who.signInName() + " works in no crew");
        return crew;
    }
}
