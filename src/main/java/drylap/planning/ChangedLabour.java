package drylap.planning;

import static drylap.persistence.jooq.Tables.JOB_FOLDER;
import static drylap.persistence.jooq.Tables.LABOUR_ANSWER;

import drylap.assembly.Method;
import drylap.kernel.Coded;
import drylap.kernel.FolderId;
import drylap.persistence.jooq.tables.records.LabourAnswerRecord;
import drylap.planning.LabourAnswer.Kind;
import drylap.planning.LabourResult.Answered;
import drylap.planning.LabourResult.AnsweredMeanwhile;
import drylap.planning.LabourResult.Refused;
import drylap.platform.News;
import drylap.platform.NewsItem;
import drylap.security.History;
import drylap.security.NotAllowed;
import drylap.security.Operation;
import drylap.security.Person;
import drylap.sites.Site;
import drylap.sites.Sites;
import drylap.speech.Saying;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.springframework.stereotype.Service;
import org.springframework.transaction.support.TransactionTemplate;

/** The labour table of a job folder as it is now: as imported, with the install minutes that a scheduler accepted since. */
@Service
public final class ChangedLabour {
    /** What is told when install minutes are answered. */
    public static final String TOPIC = "labour";

    private final DSLContext db;
    private final Sites sites;
    private final TransactionTemplate transaction;
    private final Clock clock;
    private final News news;
    private final History history;

    ChangedLabour(
            DSLContext db, Sites sites, TransactionTemplate transaction, Clock clock, News news, History history) {
        this.db = db;
        this.sites = sites;
        this.transaction = transaction;
        this.clock = clock;
        this.news = news;
        this.history = history;
    }

    /** The labour table holds at every site, so only someone to whom every site of the folder belongs answers. */
    public LabourResult answer(Person who, FolderId folder, LabourRequest asked) {
        who.demand(
                Operation.CHANGE_LABOUR, sites.of(folder).stream().map(Site::id).toList());
        Optional<Saying> wrong = asked.problem();
        if (wrong.isPresent()) return new Refused(wrong.get());
        return transaction.execute(_ -> {
            // one at a time in a folder, so that of two who saw the same the second is told
            db.selectFrom(JOB_FOLDER)
                    .where(JOB_FOLDER.ID.eq(folder.value()))
                    .forUpdate()
                    .fetch();
            var newest = newest(folder, LABOUR_ANSWER.METHOD.eq(asked.method().code())).stream()
                    .findFirst();
            if (newest.isPresent() && newest.get().id() != asked.seenId()) return new AnsweredMeanwhile(newest.get());
            if (asked.kind() == Kind.WITHDRAWN
                    && inForce(folder, asked.method()).isEmpty())
                return new Refused(Saying.of(
                        "method {0} has its imported install minutes; there is nothing to withdraw", asked.method()));
            return new Answered(add(who, folder, asked));
        });
    }

    /** The newest answer on each method, refusals included. */
    public List<LabourAnswer> newest(Person who, FolderId folder) {
        demandSight(who, folder);
        return newest(folder, LABOUR_ANSWER.ID.isNotNull());
    }

    /** The answers by which the minutes of methods differ from the import. */
    public List<LabourAnswer> inForce(Person who, FolderId folder) {
        demandSight(who, folder);
        return inForce(folder);
    }

    /** The imported table with what was accepted since laid over it, for work that acts for nobody. */
    LabourTable over(FolderId folder, LabourTable imported) {
        LabourTable table = imported;
        for (var answer : inForce(folder)) table = table.withInstall(answer.method(), answer.factor());
        return table;
    }

    private Optional<LabourAnswer> inForce(FolderId folder, Method method) {
        return inForce(folder).stream()
                .filter(answer -> answer.method() == method)
                .findFirst();
    }

    private List<LabourAnswer> inForce(FolderId folder) {
        return newest(folder, LABOUR_ANSWER.ANSWER.ne(Kind.DECLINED.code())).stream()
                .filter(answer -> answer.kind() == Kind.ACCEPTED)
                .toList();
    }

    private void demandSight(Person who, FolderId folder) {
        who.demand(Operation.SEE_CREWS);
        if (sites.within(folder, who.reach()).isEmpty())
            throw new NotAllowed(who, Operation.SEE_CREWS, "in job folder " + folder.value());
    }

    private List<LabourAnswer> newest(FolderId folder, Condition which) {
        return db.select(LABOUR_ANSWER.fields())
                .distinctOn(LABOUR_ANSWER.METHOD)
                .from(LABOUR_ANSWER)
                .where(LABOUR_ANSWER.FOLDER_ID.eq(folder.value()), which)
                .orderBy(LABOUR_ANSWER.METHOD, LABOUR_ANSWER.ID.desc())
                .fetch(row -> answer(row.into(LABOUR_ANSWER)));
    }

    private LabourAnswer add(Person who, FolderId folder, LabourRequest asked) {
        var answer = db.insertInto(LABOUR_ANSWER)
                .set(LABOUR_ANSWER.FOLDER_ID, folder.value())
                .set(LABOUR_ANSWER.METHOD, asked.method().code())
                .set(LABOUR_ANSWER.ANSWER, asked.kind().code())
                .set(LABOUR_ANSWER.FACTOR, asked.factor())
                .set(LABOUR_ANSWER.OPENINGS, asked.openings())
                .set(LABOUR_ANSWER.PERSON_ID, who.id().value())
                .set(LABOUR_ANSWER.PERSON, who.name())
                .set(LABOUR_ANSWER.AT, clock.instant())
                .returning()
                .fetchSingle(ChangedLabour::answer);
        history.note(who, null, words(answer));
        news.tell(new NewsItem(TOPIC, folder.value(), null, asked.method().code()));
        return answer;
    }

    private static String words(LabourAnswer answer) {
        String which = "install minutes of method %s".formatted(answer.method());
        String learnt = "%s times the labour table, learnt from %d openings"
                .formatted(answer.factor().stripTrailingZeros().toPlainString(), answer.openings());
        return switch (answer.kind()) {
            case ACCEPTED -> "%s accepted: %s".formatted(which, learnt);
            case DECLINED -> "%s left as they are; declined: %s".formatted(which, learnt);
            case WITHDRAWN -> "%s set back to the labour table".formatted(which);
        };
    }

    private static LabourAnswer answer(LabourAnswerRecord row) {
        return new LabourAnswer(
                row.getId(),
                Coded.of(Method.class, row.getMethod()),
                Coded.of(Kind.class, row.getAnswer()),
                row.getFactor(),
                row.getOpenings(),
                row.getPerson(),
                row.getAt());
    }
}
