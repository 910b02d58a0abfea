package drylap.planning;

import static drylap.persistence.jooq.Tables.PIN;

import drylap.kernel.Coded;
import drylap.kernel.CrewId;
import drylap.kernel.FacadeId;
import drylap.kernel.FolderId;
import drylap.kernel.OpeningId;
import drylap.kernel.Task;
import drylap.platform.News;
import drylap.platform.NewsItem;
import drylap.security.History;
import drylap.security.NotAllowed;
import drylap.security.Operation;
import drylap.security.Person;
import drylap.sites.Opening;
import drylap.sites.Openings;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Map;
import org.jooq.DSLContext;
import org.springframework.stereotype.Service;
import org.springframework.transaction.support.TransactionTemplate;

/** Visits that may not move: the next plans take them as they are. */
@Service
public final class Pins {
    /** A task of an opening. */
    public record Pinned(OpeningId opening, Task task) {
        static Pinned of(Visit visit) {
            return new Pinned(visit.opening(), visit.task());
        }
    }

    /** Where it is held. */
    record Place(CrewId crew, LocalDate date, Instant start, Instant end) {
        PublishedVisit holding(Visit was) {
            return holding(was.facade(), was.level(), was.opening(), was.task(), was.sequence());
        }

        PublishedVisit holding(Opening opening, Task task) {
            return holding(opening.facade(), opening.level(), opening.id(), task, 1);
        }

        private PublishedVisit holding(FacadeId facade, int level, OpeningId opening, Task task, int sequence) {
            return new PublishedVisit(new Visit(crew, date, sequence, facade, level, opening, task, start, end), true);
        }
    }

    private final DSLContext db;
    private final Openings openings;
    private final TransactionTemplate transaction;
    private final History history;
    private final News news;
    private final Clock clock;

    Pins(DSLContext db, Openings openings, TransactionTemplate transaction, History history, News news, Clock clock) {
        this.db = db;
        this.openings = openings;
        this.transaction = transaction;
        this.history = history;
        this.news = news;
        this.clock = clock;
    }

    /** Holds the visit where it stands; a pin that it had before is replaced. */
    public void pin(Person who, FolderId folder, Visit visit) {
        demand(who, folder, visit);
        transaction.executeWithoutResult(_ -> {
            drop(folder, Pinned.of(visit));
            db.insertInto(PIN)
                    .set(PIN.FOLDER_ID, folder.value())
                    .set(PIN.OPENING, visit.opening().value())
                    .set(PIN.TASK, visit.task().code())
                    .set(PIN.CREW, visit.crew().value())
                    .set(PIN.DATE, visit.date())
                    .set(PIN.STARTS_AT, visit.start())
                    .set(PIN.ENDS_AT, visit.end())
                    .set(PIN.PERSON, who.name())
                    .set(PIN.AT, clock.instant())
                    .execute();
            say(who, folder, visit, "pinned");
        });
    }

    /**
     * Lets the visit go.
     *
     * @return whether a person had pinned it; what its job folder brought along as pinned stays so until a plan is published
     */
    public boolean unpin(Person who, FolderId folder, Visit visit) {
        demand(who, folder, visit);
        return transaction.execute(_ -> {
            if (drop(folder, Pinned.of(visit)) == 0) return false;
            say(who, folder, visit, "unpinned");
            return true;
        });
    }

    /** The site is that of the opening, whatever the visit says. */
    private void demand(Person who, FolderId folder, Visit visit) {
        who.demand(Operation.PIN_VISIT);
        if (openings.find(folder, visit.opening(), who.reach()).isEmpty())
            throw new NotAllowed(who, Operation.PIN_VISIT, "at opening " + visit.opening());
    }

    Map<Pinned, Place> of(FolderId folder) {
        return db.selectFrom(PIN)
                .where(PIN.FOLDER_ID.eq(folder.value()))
                .fetchMap(
                        row -> new Pinned(new OpeningId(row.getOpening()), Coded.of(Task.class, row.getTask())),
                        row -> new Place(new CrewId(row.getCrew()), row.getDate(), row.getStartsAt(), row.getEndsAt()));
    }

    private int drop(FolderId folder, Pinned pinned) {
        return db.deleteFrom(PIN)
                .where(
                        PIN.FOLDER_ID.eq(folder.value()),
                        PIN.OPENING.eq(pinned.opening().value()),
                        PIN.TASK.eq(pinned.task().code()))
                .execute();
    }

    private void say(Person who, FolderId folder, Visit visit, String did) {
        var site = visit.facade().site();
        history.note(
                who,
                site,
                "%s the %s of %s, crew %s on %s"
                        .formatted(
                                did,
                                visit.task().code(),
                                visit.opening(),
                                visit.crew().value(),
                                visit.date()));
        news.tell(new NewsItem(
                Plans.TOPIC, folder.value(), site.value(), visit.opening().value()));
    }
}
