package drylap.planning;

import static drylap.persistence.jooq.Tables.JOB_FOLDER;
import static drylap.persistence.jooq.Tables.RULE_CHANGE;

import drylap.kernel.Coded;
import drylap.kernel.FolderId;
import drylap.kernel.Reach;
import drylap.kernel.Rule;
import drylap.kernel.RuleBook;
import drylap.kernel.Rules;
import drylap.kernel.SiteId;
import drylap.persistence.Within;
import drylap.persistence.jooq.tables.records.RuleChangeRecord;
import drylap.planning.RuleChangeResult.Changed;
import drylap.planning.RuleChangeResult.ChangedMeanwhile;
import drylap.planning.RuleChangeResult.Refused;
import drylap.platform.News;
import drylap.platform.NewsItem;
import drylap.progress.RulesOfSite;
import drylap.security.History;
import drylap.security.NotAllowed;
import drylap.security.Operation;
import drylap.security.Person;
import drylap.sites.Site;
import drylap.sites.Sites;
import drylap.speech.Saying;
import java.time.Clock;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jooq.DSLContext;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.support.TransactionTemplate;

/** The rules of a job folder as they are now: as imported, with what the screens changed since. */
@Service
public final class ChangedRules implements RulesOfSite {
    /** What is told when a rule changes. */
    public static final String TOPIC = "rule";

    private final DSLContext db;
    private final RuleValues imported;
    private final Sites sites;
    private final TransactionTemplate transaction;
    private final Clock clock;
    private final News news;
    private final History history;

    ChangedRules(
            DSLContext db,
            RuleValues imported,
            Sites sites,
            TransactionTemplate transaction,
            Clock clock,
            News news,
            History history) {
        this.db = db;
        this.imported = imported;
        this.sites = sites;
        this.transaction = transaction;
        this.clock = clock;
        this.news = news;
        this.history = history;
    }

    /** What holds everywhere is changed only by someone to whom every site of the folder belongs. */
    public RuleChangeResult change(Person who, FolderId folder, RuleRequest asked) {
        demand(who, folder, asked.site());
        Optional<Saying> wrong = asked.problem();
        if (wrong.isPresent()) return new Refused(wrong.get());
        if (asked.site() != null
                && sites.of(folder).stream().noneMatch(site -> site.id().equals(asked.site())))
            return new Refused(Saying.of("the job folder has no site {0}", asked.site()));
        return transaction.execute(_ -> {
            // one at a time in a folder, so that of two who saw the same the second is told
            db.selectFrom(JOB_FOLDER)
                    .where(JOB_FOLDER.ID.eq(folder.value()))
                    .forUpdate()
                    .fetch();
            var newest = newest(folder, asked.site(), asked.rule());
            if (newest.map(RuleChange::id).orElse(0L) != asked.seenId() && newest.isPresent())
                return new ChangedMeanwhile(newest.get());
            return new Changed(add(who, folder, asked));
        });
    }

    /** The newest change of each rule and place, at the person's sites and everywhere. */
    public List<RuleChange> newest(Person who, FolderId folder) {
        demandSight(who, folder);
        return newest(folder, who.reach());
    }

    /** The rules in force, at the person's sites and everywhere. */
    public RuleBook of(Person who, FolderId folder) {
        demandSight(who, folder);
        return of(folder, who.reach());
    }

    /** As imported, at the person's sites and everywhere. */
    public RuleBook imported(Person who, FolderId folder) {
        demandSight(who, folder);
        return imported.of(folder, who.reach());
    }

    /** For work that acts for nobody. */
    @Override
    public Rules of(FolderId folder, SiteId site) {
        return of(folder).at(site);
    }

    @Override
    public RuleBook of(FolderId folder) {
        return of(folder, Reach.EVERYWHERE);
    }

    RuleBook of(FolderId folder, Reach reach) {
        RuleBook book = imported.of(folder, reach);
        for (var change : newest(folder, reach))
            if (change.value() != null) book = book.with(change.site(), change.rule(), change.value());
        return book;
    }

    private void demand(Person who, FolderId folder, @Nullable SiteId site) {
        if (site != null) who.demand(Operation.CHANGE_RULES, site);
        else
            who.demand(
                    Operation.CHANGE_RULES,
                    sites.of(folder).stream().map(Site::id).toList());
    }

    private void demandSight(Person who, FolderId folder) {
        who.demand(Operation.SEE_RULES);
        if (sites.within(folder, who.reach()).isEmpty())
            throw new NotAllowed(who, Operation.SEE_RULES, "in job folder " + folder.value());
    }

    private List<RuleChange> newest(FolderId folder, Reach reach) {
        return db.select(RULE_CHANGE.fields())
                .distinctOn(RULE_CHANGE.SITE, RULE_CHANGE.RULE)
                .from(RULE_CHANGE)
                .where(RULE_CHANGE.FOLDER_ID.eq(folder.value()))
                .and(RULE_CHANGE.SITE.isNull().or(Within.reach(RULE_CHANGE.SITE, reach)))
                .orderBy(RULE_CHANGE.SITE, RULE_CHANGE.RULE, RULE_CHANGE.ID.desc())
                .fetch(row -> change(row.into(RULE_CHANGE)));
    }

    private Optional<RuleChange> newest(FolderId folder, @Nullable SiteId site, Rule rule) {
        return newest(folder, Reach.EVERYWHERE).stream()
                .filter(change -> change.rule() == rule && Objects.equals(change.site(), site))
                .findFirst();
    }

    private RuleChange add(Person who, FolderId folder, RuleRequest asked) {
        var change = db.insertInto(RULE_CHANGE)
                .set(RULE_CHANGE.FOLDER_ID, folder.value())
                .set(
                        RULE_CHANGE.SITE,
                        asked.site() == null ? null : asked.site().value())
                .set(RULE_CHANGE.RULE, asked.rule().code())
                .set(RULE_CHANGE.VALUE, asked.value())
                .set(RULE_CHANGE.REASON, asked.reason().strip())
                .set(RULE_CHANGE.PERSON_ID, who.id().value())
                .set(RULE_CHANGE.PERSON, who.name())
                .set(RULE_CHANGE.AT, clock.instant())
                .returning()
                .fetchSingle(ChangedRules::change);
        history.note(who, asked.site(), words(change));
        String site = asked.site() == null ? null : asked.site().value();
        news.tell(new NewsItem(TOPIC, folder.value(), site, asked.rule().code()));
        return change;
    }

    private static String words(RuleChange change) {
        return "rule %s %s%s: %s"
                .formatted(
                        change.rule().code(),
                        change.value() == null ? "set back" : "set to " + RuleRequest.plain(change.value()),
                        change.site() == null ? " everywhere" : "",
                        change.reason());
    }

    private static RuleChange change(RuleChangeRecord row) {
        return new RuleChange(
                row.getId(),
                RuleValues.site(row.getSite()),
                Coded.of(Rule.class, row.getRule()),
                row.getValue(),
                row.getReason(),
                row.getPerson(),
                row.getAt());
    }
}
