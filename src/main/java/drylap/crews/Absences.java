package drylap.crews;

import static drylap.persistence.jooq.Tables.ABSENCE;
import static drylap.persistence.jooq.Tables.SITE;

import drylap.crews.AbsenceResult.Added;
import drylap.crews.AbsenceResult.Refused;
import drylap.crews.AbsenceResult.Withdrawn;
import drylap.crews.AbsenceResult.WithdrawnMeanwhile;
import drylap.kernel.CrewId;
import drylap.kernel.FolderId;
import drylap.persistence.Within;
import drylap.persistence.jooq.tables.records.AbsenceRecord;
import drylap.platform.News;
import drylap.platform.NewsItem;
import drylap.security.History;
import drylap.security.NotAllowed;
import drylap.security.Operation;
import drylap.security.Person;
import drylap.speech.Saying;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import org.jooq.DSLContext;
import org.springframework.stereotype.Service;
import org.springframework.transaction.support.TransactionTemplate;

/**
 * When crews do not come. A crew belongs to no site, so whoever may change absences may change those of every crew of a job
 * folder in which they have a site.
 */
@Service
public final class Absences {
    /** What is told when one is added or withdrawn. */
    public static final String TOPIC = "absence";

    private final DSLContext db;
    private final Shifts shifts;
    private final TransactionTemplate transaction;
    private final Clock clock;
    private final News news;
    private final History history;

    Absences(DSLContext db, Shifts shifts, TransactionTemplate transaction, Clock clock, News news, History history) {
        this.db = db;
        this.shifts = shifts;
        this.transaction = transaction;
        this.clock = clock;
        this.news = news;
        this.history = history;
    }

    public AbsenceResult add(Person who, FolderId folder, AbsenceRequest asked) {
        demand(who, Operation.CHANGE_ABSENCES, folder);
        Optional<Saying> wrong = asked.problem(shifts.of(folder));
        if (wrong.isPresent()) return new Refused(wrong.get());
        return transaction.execute(_ -> {
            var row = insert(who, folder, asked);
            say(
                    who,
                    folder,
                    asked.crew(),
                    "crew %s %s on %s: %s",
                    asked.crew(),
                    row.words(),
                    asked.date(),
                    row.reason());
            return new Added(row);
        });
    }

    /** Takes an absence back; it stays to be read. */
    public AbsenceResult withdraw(Person who, FolderId folder, long id) {
        demand(who, Operation.CHANGE_ABSENCES, folder);
        return transaction.execute(_ -> {
            int gone = db.update(ABSENCE)
                    .set(ABSENCE.WITHDRAWN_AT, clock.instant())
                    .set(ABSENCE.WITHDRAWN_BY, who.name())
                    .where(ABSENCE.FOLDER_ID.eq(folder.value()), ABSENCE.ID.eq(id), ABSENCE.WITHDRAWN_AT.isNull())
                    .execute();
            var row = db.fetchOne(ABSENCE, ABSENCE.FOLDER_ID.eq(folder.value()), ABSENCE.ID.eq(id));
            if (row == null) return new Refused(Saying.of("there is no absence number {0} in this job folder", id));
            if (gone == 0) return new WithdrawnMeanwhile(row.getWithdrawnBy(), row.getWithdrawnAt());
            var absence = absence(row);
            say(who, folder, absence.crew(), "crew %s comes on %s after all", absence.crew(), absence.date());
            return new Withdrawn(absence);
        });
    }

    /** Those in force, by date and crew. */
    public List<Absence> of(Person who, FolderId folder) {
        demand(who, Operation.SEE_CREWS, folder);
        return of(folder);
    }

    /** Those in force, for work that acts for nobody. */
    public List<Absence> of(FolderId folder) {
        return db.selectFrom(ABSENCE)
                .where(ABSENCE.FOLDER_ID.eq(folder.value()), ABSENCE.WITHDRAWN_AT.isNull())
                .orderBy(ABSENCE.DATE, ABSENCE.CREW, ABSENCE.FROM_TIME.asc().nullsFirst(), ABSENCE.ID)
                .fetch(Absences::absence);
    }

    private void demand(Person who, Operation operation, FolderId folder) {
        who.demand(operation);
        boolean inReach = db.fetchExists(db.selectOne()
                .from(SITE)
                .where(SITE.FOLDER_ID.eq(folder.value()), Within.reach(SITE.SITE_, who.reach())));
        if (!inReach) throw new NotAllowed(who, operation, "in job folder " + folder.value());
    }

    private Absence insert(Person who, FolderId folder, AbsenceRequest asked) {
        return db.insertInto(ABSENCE)
                .set(ABSENCE.FOLDER_ID, folder.value())
                .set(ABSENCE.CREW, asked.crew().value())
                .set(ABSENCE.DATE, asked.date())
                .set(ABSENCE.FROM_TIME, asked.from())
                .set(ABSENCE.UNTIL_TIME, asked.until())
                .set(ABSENCE.REASON, asked.reason().strip())
                .set(ABSENCE.PERSON_ID, who.id().value())
                .set(ABSENCE.PERSON, who.name())
                .set(ABSENCE.AT, clock.instant())
                .returning()
                .fetchSingle(Absences::absence);
    }

    private void say(Person who, FolderId folder, CrewId crew, String what, Object... parts) {
        history.note(who, null, what.formatted(parts));
        news.tell(new NewsItem(TOPIC, folder.value(), null, crew.value()));
    }

    private static Absence absence(AbsenceRecord row) {
        return new Absence(
                row.getId(),
                new CrewId(row.getCrew()),
                row.getDate(),
                row.getFromTime(),
                row.getUntilTime(),
                row.getReason(),
                row.getPerson(),
                row.getAt());
    }
}
