package drylap.planning;

import static drylap.persistence.jooq.Tables.JOB_FOLDER;

import drylap.kernel.FolderId;
import drylap.kernel.SiteId;
import drylap.planning.HandResult.Refused;
import drylap.planning.HandResult.Saved;
import drylap.platform.News;
import drylap.platform.NewsItem;
import drylap.security.History;
import drylap.security.Operation;
import drylap.security.Person;
import drylap.sites.Site;
import drylap.sites.Sites;
import drylap.speech.Saying;
import java.time.Clock;
import java.util.Optional;
import java.util.function.Supplier;
import org.jooq.DSLContext;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.support.TransactionTemplate;

/** What all changes by hand have in common: one at a time in a folder, whole or not at all, in the history, and told to open screens. */
@Service
final class HandChanges {
    /** What is told when something was put in by hand. */
    private static final String TOPIC = "by-hand";

    private static final String OWN = "Own sites";
    private static final int LONGEST = 80;

    private final DSLContext db;
    private final TransactionTemplate transaction;
    private final LabourRows labour;
    private final Sites sites;
    private final History history;
    private final News news;
    private final Clock clock;

    HandChanges(
            DSLContext db,
            TransactionTemplate transaction,
            LabourRows labour,
            Sites sites,
            History history,
            News news,
            Clock clock) {
        this.db = db;
        this.transaction = transaction;
        this.labour = labour;
        this.sites = sites;
        this.history = history;
        this.news = news;
        this.clock = clock;
    }

    /** Opens a folder of the contractor's own, with the labour minutes that a job begins with and every rule at its default. */
    FolderId open() {
        var id = new FolderId(db.insertInto(JOB_FOLDER)
                .set(JOB_FOLDER.NAME, OWN)
                .set(JOB_FOLDER.IMPORTED_AT, clock.instant())
                .returning(JOB_FOLDER.ID)
                .fetchSingle(JOB_FOLDER.ID));
        labour.save(id, StandardLabour.TABLE);
        return id;
    }

    /** Whoever adds to a folder must see all of it, since its plans are made of all of it; a crew belongs to no site of it. */
    void demandWhole(Person who, FolderId folder) {
        who.demand(
                Operation.IMPORT_FOLDER, sites.of(folder).stream().map(Site::id).toList());
    }

    HandResult change(FolderId folder, Supplier<HandResult> change) {
        return transaction.execute(_ -> {
            var row = db.selectFrom(JOB_FOLDER)
                    .where(JOB_FOLDER.ID.eq(folder.value()))
                    .forUpdate()
                    .fetchOptional()
                    .orElseThrow(() -> new UnknownFolder(folder));
            if (row.getSample())
                return new Refused(Saying.of(
                        "\"{0}\" is the invented sample, which stays as it is. Begin with a site of your own.",
                        row.getName()));
            HandResult result = change.get();
            if (result instanceof Saved) raise(folder);
            return result;
        });
    }

    /** Both in one transaction. */
    HandResult begin(Supplier<FolderId> open, java.util.function.Function<FolderId, HandResult> change) {
        return transaction.execute(status -> {
            FolderId id = open.get();
            HandResult result = change(id, () -> change.apply(id));
            if (result instanceof Refused) status.setRollbackOnly();
            return result;
        });
    }

    Saved saved(Person who, FolderId folder, @Nullable SiteId site, String what) {
        history.note(who, site, what);
        news.tell(new NewsItem(TOPIC, folder.value(), site == null ? null : site.value(), ""));
        return new Saved(folder);
    }

    private void raise(FolderId folder) {
        db.update(JOB_FOLDER)
                .set(JOB_FOLDER.VERSION, JOB_FOLDER.VERSION.plus(1))
                .where(JOB_FOLDER.ID.eq(folder.value()))
                .execute();
    }

    /** What speaks against a name. */
    static Optional<Saying> against(Saying of, String name) {
        if (name.isBlank()) return Optional.of(Saying.of("{0} is blank; accepted: 1 to {1} characters", of, LONGEST));
        return name.length() > LONGEST
                ? Optional.of(Saying.of("{0} has {1} characters; accepted: 1 to {2}", of, name.length(), LONGEST))
                : Optional.empty();
    }
}
