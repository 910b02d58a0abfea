package drylap.planning;

import static drylap.persistence.jooq.Tables.JOB_FOLDER;
import static drylap.persistence.jooq.Tables.OPENING;
import static drylap.persistence.jooq.Tables.SITE;
import static org.jooq.impl.DSL.field;
import static org.jooq.impl.DSL.selectCount;
import static org.jooq.impl.DSL.selectOne;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import drylap.crews.Crews;
import drylap.crews.Shift;
import drylap.crews.Shifts;
import drylap.crews.TravelLegs;
import drylap.kernel.FolderId;
import drylap.kernel.Reach;
import drylap.kernel.SiteId;
import drylap.kernel.TimeWindow;
import drylap.persistence.Within;
import drylap.security.History;
import drylap.security.Operation;
import drylap.security.Person;
import drylap.sites.Facades;
import drylap.sites.Openings;
import drylap.sites.ScheduledOpenings;
import drylap.sites.Site;
import drylap.sites.Sites;
import drylap.weather.Forecasts;
import java.time.Clock;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jooq.DSLContext;
import org.jooq.Records;
import org.springframework.stereotype.Service;
import org.springframework.transaction.support.TransactionTemplate;

/**
 * The job folders in the database. A stored folder never changes, but for its openings, which window schedules add and change, and for what is
 * put in by hand: newer files make a newer folder.
 */
@Service
public final class JobFolders {
    private static final int MOST_KNOWN = 6;

    private final DSLContext db;
    private final TransactionTemplate transaction;
    private final Clock clock;
    private final Parts parts;
    private final History history;
    private final Cache<Read, JobFolder> known =
            Caffeine.newBuilder().maximumSize(MOST_KNOWN).softValues().build();

    /**
     * What was read of a folder may be shown again, as long as no newer schedule or hand changed it, on whichever node.
     *
     * @param schedule the newest that was taken in
     */
    private record Read(FolderId folder, Reach reach, long schedule, int version) {}

    JobFolders(DSLContext db, TransactionTemplate transaction, Clock clock, Parts parts, History history) {
        this.db = db;
        this.transaction = transaction;
        this.clock = clock;
        this.parts = parts;
        this.history = history;
    }

    /** Stores the folder whole, or, where anything fails, nothing of it. Instants are kept to the microsecond. */
    public FolderId save(String name, JobFolder folder) {
        return transaction.execute(_ -> {
            FolderId id = open(name);
            parts.save(id, folder);
            return id;
        });
    }

    /** As {@link #save(String, JobFolder)}, for a person who may bring in folders with all of these sites. */
    public FolderId save(Person who, String name, JobFolder folder) {
        who.demand(
                Operation.IMPORT_FOLDER, folder.sites().stream().map(Site::id).toList());
        return transaction.execute(_ -> {
            history.note(who, null, "brought in job folder \"%s\"".formatted(name));
            return save(name, folder);
        });
    }

    /**
     * The folder as it was saved, rows in their order.
     *
     * @throws UnknownFolder where there is none of that number
     */
    public JobFolder load(FolderId id) {
        return load(id, Reach.EVERYWHERE);
    }

    /** What of it lies at sites within reach. */
    JobFolder load(FolderId id, Reach reach) {
        int version = db.select(JOB_FOLDER.VERSION)
                .from(JOB_FOLDER)
                .where(JOB_FOLDER.ID.eq(id.value()))
                .fetchOptional(JOB_FOLDER.VERSION)
                .orElseThrow(() -> new UnknownFolder(id));
        return known.get(new Read(id, reach, parts.scheduled().newest(id), version), _ -> parts.load(id, reach));
    }

    /** Newest first. */
    public List<StoredFolder> list() {
        return list(Reach.EVERYWHERE);
    }

    /** Those with a site of the person's, newest first. */
    public List<StoredFolder> list(Person who) {
        who.demand(Operation.SEE_FOLDERS);
        return list(who.reach());
    }

    private List<StoredFolder> list(Reach reach) {
        return db.select(
                        JOB_FOLDER.ID.convertFrom(FolderId::new),
                        JOB_FOLDER.NAME,
                        JOB_FOLDER.IMPORTED_AT,
                        field(selectCount().from(SITE).where(SITE.FOLDER_ID.eq(JOB_FOLDER.ID))),
                        field(selectCount().from(OPENING).where(OPENING.FOLDER_ID.eq(JOB_FOLDER.ID))),
                        JOB_FOLDER.SAMPLE)
                .from(JOB_FOLDER)
                .whereExists(
                        selectOne().from(SITE).where(SITE.FOLDER_ID.eq(JOB_FOLDER.ID), Within.reach(SITE.SITE_, reach)))
                .orderBy(JOB_FOLDER.ID.desc())
                .fetch(Records.mapping((id, name, at, sites, openings, sample) ->
                        new StoredFolder(id, name, at, sites, openings, Boolean.TRUE.equals(sample))));
    }

    /** From the first crew's start to the last one's end; none where nobody comes. */
    Optional<TimeWindow> shifts(FolderId id) {
        List<Shift> all = parts.shifts().of(id);
        return all.stream()
                .map(Shift::startsAt)
                .min(Comparator.naturalOrder())
                .map(first -> new TimeWindow(
                        first,
                        all.stream()
                                .map(Shift::limit)
                                .max(Comparator.naturalOrder())
                                .orElse(first)));
    }

    /** For the sample only: as {@link #save(String, JobFolder)}, and marked as invented. */
    public FolderId saveSample(String name, JobFolder folder) {
        return transaction.execute(_ -> {
            FolderId id = save(name, folder);
            db.update(JOB_FOLDER)
                    .set(JOB_FOLDER.SAMPLE, true)
                    .where(JOB_FOLDER.ID.eq(id.value()))
                    .execute();
            return id;
        });
    }

    /** For the sample only: takes a folder away that is marked as invented, with all that hangs on it here; marks must be gone. */
    public void removeSample(FolderId id) {
        db.deleteFrom(JOB_FOLDER)
                .where(JOB_FOLDER.ID.eq(id.value()), JOB_FOLDER.SAMPLE.isTrue())
                .execute();
    }

    /** The sites of all folders, by id: what an administrator may choose from. */
    public List<SiteId> knownSites() {
        return db.selectDistinct(SITE.SITE_).from(SITE).orderBy(SITE.SITE_).fetch(row -> new SiteId(row.value1()));
    }

    private FolderId open(String name) {
        return new FolderId(db.insertInto(JOB_FOLDER)
                .set(JOB_FOLDER.NAME, name)
                .set(JOB_FOLDER.IMPORTED_AT, clock.instant())
                .returning(JOB_FOLDER.ID)
                .fetchSingle(JOB_FOLDER.ID));
    }

    /** What a folder is made of, in the order in which one part refers to another. */
    @Service
    record Parts(
            Sites sites,
            Facades facades,
            Openings openings,
            ScheduledOpenings scheduled,
            Crews crews,
            Shifts shifts,
            TravelLegs legs,
            Forecasts forecasts,
            LabourRows labour,
            RuleValues rules,
            PublishedVisits published) {
        void save(FolderId id, JobFolder folder) {
            sites.saveAll(id, folder.sites());
            facades.saveAll(id, folder.facades());
            openings.saveAll(id, folder.openings());
            crews.saveAll(id, folder.crews());
            shifts.saveAll(id, folder.shifts());
            legs.save(id, folder.travel());
            forecasts.saveAll(id, folder.forecasts());
            labour.save(id, folder.labour());
            rules.save(id, folder.rules());
            published.saveAll(id, folder.published());
        }

        JobFolder load(FolderId id, Reach reach) {
            return new JobFolder(
                    sites.within(id, reach),
                    facades.within(id, reach),
                    openings.within(id, reach),
                    crews.of(id),
                    shifts.of(id),
                    legs.of(id),
                    forecasts.within(id, reach),
                    labour.of(id),
                    rules.of(id, reach),
                    published.within(id, reach));
        }
    }
}
