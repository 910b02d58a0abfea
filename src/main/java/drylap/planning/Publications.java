package drylap.planning;

import static drylap.persistence.jooq.Tables.PLAN;
import static drylap.persistence.jooq.Tables.PUBLICATION;
import static drylap.persistence.jooq.Tables.SITE;

import drylap.kernel.FolderId;
import drylap.kernel.SiteId;
import drylap.persistence.jooq.tables.records.PublicationRecord;
import drylap.planning.PublishResult.Published;
import drylap.planning.PublishResult.PublishedMeanwhile;
import drylap.platform.News;
import drylap.platform.NewsItem;
import drylap.security.History;
import drylap.security.Operation;
import drylap.security.Person;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import org.jooq.DSLContext;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.support.TransactionTemplate;

/** Which plan people work by. The folder in work is that of the newest publication. */
@Service
public final class Publications {
    private final DSLContext db;
    private final TransactionTemplate transaction;
    private final History history;
    private final News news;
    private final Clock clock;

    Publications(DSLContext db, TransactionTemplate transaction, History history, News news, Clock clock) {
        this.db = db;
        this.transaction = transaction;
        this.history = history;
        this.news = news;
        this.clock = clock;
    }

    /**
     * Publishes a plan of the folder in the place of the publication that the person saw.
     *
     * @param seen the newest publication when the person looked; none: there was none
     * @throws IllegalArgumentException where the plan is of another folder
     */
    public PublishResult publish(Person who, FolderId folder, PlanId plan, @Nullable PublicationId seen) {
        who.demand(Operation.PUBLISH_PLAN, sitesOf(folder));
        return transaction.execute(_ -> {
            var result = add(folder, plan, seen, who.id().value(), who.name());
            if (result instanceof Published) history.note(who, null, "published plan " + plan.value());
            return result;
        });
    }

    /** For the sample only, which nobody publishes. */
    public void publishSample(FolderId folder, PlanId plan) {
        transaction.executeWithoutResult(_ -> add(folder, plan, null, null, Publication.SAMPLE));
    }

    public Optional<Publication> latest(FolderId folder) {
        return db.selectFrom(PUBLICATION)
                .where(PUBLICATION.FOLDER_ID.eq(folder.value()))
                .orderBy(PUBLICATION.ID.desc())
                .limit(1)
                .fetchOptional(Publications::publication);
    }

    /** The folder that crews work by; none before anything was published. */
    public Optional<FolderId> inWork() {
        return db.select(PUBLICATION.FOLDER_ID)
                .from(PUBLICATION)
                .orderBy(PUBLICATION.ID.desc())
                .limit(1)
                .fetchOptional(row -> new FolderId(row.value1()));
    }

    private PublishResult add(
            FolderId folder, PlanId plan, @Nullable PublicationId seen, @Nullable Long person, String name) {
        if (!db.fetchExists(PLAN, PLAN.ID.eq(plan.value()), PLAN.FOLDER_ID.eq(folder.value())))
            throw new IllegalArgumentException(
                    "plan %d is no plan of job folder %d".formatted(plan.value(), folder.value()));
        var added = db.insertInto(PUBLICATION)
                .set(PUBLICATION.FOLDER_ID, folder.value())
                .set(PUBLICATION.PLAN_ID, plan.value())
                .set(PUBLICATION.FOLLOWS, seen == null ? null : seen.value())
                .set(PUBLICATION.PUBLISHED_AT, clock.instant())
                .set(PUBLICATION.PERSON_ID, person)
                .set(PUBLICATION.PERSON, name)
                .onConflictDoNothing()
                .returning()
                .fetchOptional(Publications::publication);
        added.ifPresent(_ -> news.tell(new NewsItem(Plans.TOPIC, folder.value(), null, "published")));
        return added.<PublishResult>map(Published::new)
                .orElseGet(() -> new PublishedMeanwhile(latest(folder).orElseThrow()));
    }

    List<SiteId> sitesOf(FolderId folder) {
        return db.select(SITE.SITE_)
                .from(SITE)
                .where(SITE.FOLDER_ID.eq(folder.value()))
                .fetch(row -> new SiteId(row.value1()));
    }

    private static Publication publication(PublicationRecord row) {
        return new Publication(
                new PublicationId(row.getId()),
                new FolderId(row.getFolderId()),
                new PlanId(row.getPlanId()),
                row.getPublishedAt(),
                row.getPerson());
    }
}
