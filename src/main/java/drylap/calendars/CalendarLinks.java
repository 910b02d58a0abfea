package drylap.calendars;

import static drylap.persistence.jooq.Tables.CALENDAR_LINK;

import drylap.crews.Crews;
import drylap.kernel.Coded;
import drylap.kernel.CrewId;
import drylap.kernel.FolderId;
import drylap.kernel.Language;
import drylap.kernel.Reach;
import drylap.kernel.Reading;
import drylap.kernel.Ruler;
import drylap.kernel.SiteId;
import drylap.persistence.jooq.tables.records.CalendarLinkRecord;
import drylap.platform.News;
import drylap.platform.NewsItem;
import drylap.security.History;
import drylap.security.NotAllowed;
import drylap.security.Operation;
import drylap.security.Person;
import drylap.security.Secret;
import drylap.sites.Sites;
import java.time.Clock;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.jooq.DSLContext;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.support.TransactionTemplate;

/**
 * The secret links to crews' calendars. A link tells of the sites that its maker might see when it was made, so that nobody gets
 * to know of a site through a link that they could not see themselves.
 */
@Service
public final class CalendarLinks {
    /** What is told when a link is made or revoked. */
    public static final String TOPIC = "calendar";

    private final DSLContext db;
    private final Sites sites;
    private final Crews crews;
    private final TransactionTemplate transaction;
    private final History history;
    private final News news;
    private final Clock clock;

    CalendarLinks(
            DSLContext db,
            Sites sites,
            Crews crews,
            TransactionTemplate transaction,
            History history,
            News news,
            Clock clock) {
        this.db = db;
        this.sites = sites;
        this.crews = crews;
        this.transaction = transaction;
        this.history = history;
        this.news = news;
        this.clock = clock;
    }

    /**
     * Makes a link to the calendar of a crew of the folder, for those who read as its maker does.
     *
     * @throws IllegalArgumentException where the folder has no such crew
     */
    public NewLink make(Person who, FolderId folder, CrewId crew) {
        return make(who, folder, crew, who.reading());
    }

    /**
     * The same for those who read otherwise.
     *
     * @throws IllegalArgumentException where the folder has no such crew
     */
    public NewLink make(Person who, FolderId folder, CrewId crew, Reading reading) {
        who.demand(Operation.CHANGE_CALENDAR_LINKS);
        if (sites.within(folder, who.reach()).isEmpty())
            throw new NotAllowed(who, Operation.CHANGE_CALENDAR_LINKS, "in job folder " + folder.value());
        if (crews.of(folder).stream().noneMatch(one -> one.id().equals(crew)))
            throw new IllegalArgumentException("job folder %d has no crew %s".formatted(folder.value(), crew));
        String secret = Secret.random();
        return transaction.execute(_ -> {
            var link = insert(who, crew, reading, secret);
            say(who, crew, "made a calendar link for crew %s".formatted(crew));
            return new NewLink(link, secret);
        });
    }

    /**
     * Ends a link: from now on it opens nothing.
     *
     * @return whether it was this call that revoked it; someone else may have been quicker, or there is no such link
     */
    public boolean revoke(Person who, long id) {
        who.demand(Operation.CHANGE_CALENDAR_LINKS);
        return transaction.execute(_ -> {
            var link = db.selectFrom(CALENDAR_LINK)
                    .where(CALENDAR_LINK.ID.eq(id))
                    .forUpdate()
                    .fetchOptional(CalendarLinks::link);
            if (link.isEmpty() || !link.get().inUse()) return false;
            if (!covers(who.reach(), link.get().reach()))
                throw new NotAllowed(who, Operation.CHANGE_CALENDAR_LINKS, "of every site that the link tells of");
            db.update(CALENDAR_LINK)
                    .set(CALENDAR_LINK.REVOKED_AT, clock.instant())
                    .set(CALENDAR_LINK.REVOKED_BY, who.name())
                    .where(CALENDAR_LINK.ID.eq(id))
                    .execute();
            var crew = link.get().crew();
            say(who, crew, "revoked a calendar link of crew %s".formatted(crew));
            return true;
        });
    }

    /** Those of a crew, newest first: for whoever keeps crews, the ones that tell of no site beyond theirs; for a crew, its own. */
    public List<CalendarLink> of(Person who, CrewId crew) {
        who.demand(Operation.SEE_CALENDAR_LINKS);
        boolean keeps = who.may(Operation.SEE_CREWS);
        if (!keeps && !crew.equals(who.crew()))
            throw new NotAllowed(who, Operation.SEE_CALENDAR_LINKS, "of crew " + crew);
        return db
                .selectFrom(CALENDAR_LINK)
                .where(CALENDAR_LINK.CREW.eq(crew.value()))
                .orderBy(CALENDAR_LINK.ID.desc())
                .fetch(CalendarLinks::link)
                .stream()
                .filter(link -> !keeps || covers(who.reach(), link.reach()))
                .toList();
    }

    /** The link that a secret belongs to, unless it was revoked; that it was asked for is noted. */
    Optional<CalendarLink> open(String secret) {
        return db.update(CALENDAR_LINK)
                .set(CALENDAR_LINK.READ_AT, clock.instant())
                .where(CALENDAR_LINK.SECRET_HASH.eq(Secret.hash(secret)), CALENDAR_LINK.REVOKED_AT.isNull())
                .returning()
                .fetchOptional(CalendarLinks::link);
    }

    private CalendarLink insert(Person who, CrewId crew, Reading reading, String secret) {
        return db.insertInto(CALENDAR_LINK)
                .set(CALENDAR_LINK.CREW, crew.value())
                .set(CALENDAR_LINK.SECRET_HASH, Secret.hash(secret))
                .set(CALENDAR_LINK.LANGUAGE, reading.language().code())
                .set(CALENDAR_LINK.RULER, reading.ruler().code())
                .set(CALENDAR_LINK.SITES, names(who.reach()))
                .set(CALENDAR_LINK.PERSON_ID, who.id().value())
                .set(CALENDAR_LINK.PERSON, who.name())
                .set(CALENDAR_LINK.MADE_AT, clock.instant())
                .returning()
                .fetchSingle(CalendarLinks::link);
    }

    private void say(Person who, CrewId crew, String what) {
        history.note(who, null, what);
        news.tell(new NewsItem(TOPIC, 0, null, crew.value()));
    }

    private static boolean covers(Reach mine, Reach other) {
        return mine.everySite() || (!other.everySite() && mine.coversAll(other.sites()));
    }

    private static String @Nullable [] names(Reach reach) {
        return reach.everySite()
                ? null
                : reach.sites().stream().map(SiteId::value).sorted().toArray(String[]::new);
    }

    private static CalendarLink link(CalendarLinkRecord row) {
        return new CalendarLink(
                row.getId(),
                new CrewId(row.getCrew()),
                row.getSites() == null
                        ? Reach.EVERYWHERE
                        : Reach.of(
                                Arrays.stream(row.getSites()).map(SiteId::new).toList()),
                new Reading(Coded.of(Language.class, row.getLanguage()), Coded.of(Ruler.class, row.getRuler())),
                row.getPerson(),
                row.getMadeAt(),
                row.getReadAt(),
                row.getRevokedAt(),
                row.getRevokedBy());
    }
}
