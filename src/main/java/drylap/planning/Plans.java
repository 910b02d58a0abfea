package drylap.planning;

import static drylap.persistence.jooq.Tables.JOB_FOLDER;
import static drylap.persistence.jooq.Tables.PLAN;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import drylap.kernel.FolderId;
import drylap.kernel.Reach;
import drylap.persistence.jooq.tables.records.PlanRecord;
import drylap.platform.News;
import drylap.platform.NewsItem;
import drylap.security.Operation;
import drylap.security.Person;
import java.time.Clock;
import java.util.Optional;
import org.jooq.DSLContext;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.support.TransactionTemplate;

/** The plans in the database. A stored plan is immutable; the newest of a folder is the one that counts. */
@Service
public final class Plans {
    public static final String TOPIC = "plan";
    private static final int MOST_KNOWN = 12;

    private final DSLContext db;
    private final TransactionTemplate transaction;
    private final Clock clock;
    private final PlanSheets sheets;
    private final PlanRemarks remarks;
    private final PlanForecasts forecasts;
    private final News news;
    private final Cache<Read, Plan> known =
            Caffeine.newBuilder().maximumSize(MOST_KNOWN).softValues().build();

    /** A stored plan never changes, so that what was read of one may be shown again. */
    private record Read(PlanId plan, Reach reach) {}

    Plans(
            DSLContext db,
            TransactionTemplate transaction,
            Clock clock,
            PlanSheets sheets,
            PlanRemarks remarks,
            PlanForecasts forecasts,
            News news) {
        this.db = db;
        this.transaction = transaction;
        this.clock = clock;
        this.sheets = sheets;
        this.remarks = remarks;
        this.forecasts = forecasts;
        this.news = news;
    }

    /** A plan of which it is not known by which forecasts it was made. */
    public PlanId save(FolderId folder, Plan plan) {
        return save(folder, plan, null, false);
    }

    /**
     * Stores the plan, whole or not at all, as the newest of its folder. One that breaks a hard rule is refused.
     *
     * @param by the folder as the planner was told it
     */
    public PlanId save(FolderId folder, Plan plan, JobFolder by) {
        return save(folder, plan, by, false);
    }

    /** As {@link #save}, for a plan with a visit moved by hand: what the day broke of it before may stay. */
    public PlanId saveMovedByHand(FolderId folder, Plan plan, JobFolder by) {
        return save(folder, plan, by, true);
    }

    private PlanId save(FolderId folder, Plan plan, @Nullable JobFolder by, boolean byHand) {
        return transaction.execute(_ -> {
            PlanId id = open(folder, plan, byHand);
            sheets.save(id, plan);
            remarks.save(id, plan);
            if (by != null) forecasts.save(id, by);
            news.tell(new NewsItem(TOPIC, folder.value(), null, "proposed"));
            return id;
        });
    }

    /** The newest plan of the folder, equal to the one that was saved. */
    public Optional<Plan> latest(FolderId folder) {
        return newest(folder, Reach.EVERYWHERE).map(StoredPlan::plan);
    }

    /** What of the newest plan lies at the person's sites; its ledger is that of the whole plan. */
    public Optional<StoredPlan> latest(Person who, FolderId folder) {
        who.demand(Operation.SEE_WEEK_SHEET);
        return newest(folder, who.reach());
    }

    /** What of a plan lies at the person's sites. */
    public StoredPlan load(Person who, PlanId plan) {
        who.demand(Operation.SEE_OPENINGS);
        return load(plan, who.reach());
    }

    /** The whole plan, for work that acts for nobody. */
    public Plan load(PlanId plan) {
        return load(plan, Reach.EVERYWHERE).plan();
    }

    /** The folder's newest plan; no other becomes the newest before the transaction that asks has ended. */
    public StoredPlan holdNewest(FolderId folder) {
        db.selectOne()
                .from(JOB_FOLDER)
                .where(JOB_FOLDER.ID.eq(folder.value()))
                .forUpdate()
                .fetch();
        return newest(folder, Reach.EVERYWHERE).orElseThrow(() -> new UnknownFolder(folder));
    }

    StoredPlan load(PlanId plan, Reach reach) {
        return stored(db.selectFrom(PLAN).where(PLAN.ID.eq(plan.value())).fetchSingle(), reach);
    }

    private Optional<StoredPlan> newest(FolderId folder, Reach reach) {
        return db.selectFrom(PLAN)
                .where(PLAN.FOLDER_ID.eq(folder.value()))
                .orderBy(PLAN.ID.desc())
                .limit(1)
                .fetchOptional()
                .map(row -> stored(row, reach));
    }

    private PlanId open(FolderId folder, Plan plan, boolean byHand) {
        return new PlanId(db.insertInto(PLAN)
                .set(PLAN.FOLDER_ID, folder.value())
                .set(PLAN.MADE_AT, clock.instant())
                .set(PLAN.STARTS_AT, plan.start())
                .set(PLAN.HORIZON_END, plan.horizonEnd())
                .set(PLAN.HARD, plan.ledger().hard())
                .set(PLAN.MEDIUM, plan.ledger().medium())
                .set(PLAN.SOFT, plan.ledger().soft())
                .set(PLAN.BY_HAND, byHand)
                .returning(PLAN.ID)
                .fetchSingle(PLAN.ID));
    }

    private StoredPlan stored(PlanRecord row, Reach reach) {
        var id = new PlanId(row.getId());
        return new StoredPlan(id, row.getMadeAt(), known.get(new Read(id, reach), _ -> plan(row, reach)));
    }

    private Plan plan(PlanRecord row, Reach reach) {
        PlanId id = new PlanId(row.getId());
        FolderId folder = new FolderId(row.getFolderId());
        return new Plan(
                row.getStartsAt(),
                row.getHorizonEnd(),
                sheets.visits(id, reach),
                remarks.unplanned(id, folder, reach),
                remarks.coverNow(id, folder, reach),
                sheets.openHours(id, reach),
                new Ledger(remarks.lines(id), row.getHard(), row.getMedium(), row.getSoft()));
    }
}
