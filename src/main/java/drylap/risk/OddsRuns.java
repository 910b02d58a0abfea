package drylap.risk;

import static drylap.persistence.jooq.Tables.PLAN;

import drylap.climate.KeptNormals;
import drylap.kernel.FolderId;
import drylap.kernel.SiteId;
import drylap.persistence.jooq.tables.records.JobRecord;
import drylap.planning.CurrentFolders;
import drylap.planning.JobFolder;
import drylap.planning.JobFolders;
import drylap.planning.PlanId;
import drylap.planning.Plans;
import drylap.planning.RunState.Status;
import drylap.platform.Asker;
import drylap.platform.BackgroundWork;
import drylap.platform.JobId;
import drylap.platform.News;
import drylap.platform.NewsItem;
import drylap.risk.OddsState.Odds;
import drylap.security.Operation;
import drylap.security.Person;
import drylap.sites.Site;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jooq.DSLContext;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.support.TransactionTemplate;

/** The odds of stored plans: reckoned in the background on whichever node is free, and kept with the plan. */
@Service
public final class OddsRuns {
    public static final String TOPIC = "odds";
    private static final RiskRequest USUAL = new RiskRequest(RiskRequest.USUAL_TRIALS, 1);

    private final DSLContext db;
    private final TransactionTemplate transaction;
    private final BackgroundWork work;
    private final News news;
    private final OddsRows rows;
    private final OddsFrom start;
    private final KeptNormals normals;
    private final JobFolders folders;
    private final CurrentFolders current;
    private final Plans plans;

    OddsRuns(
            DSLContext db,
            TransactionTemplate transaction,
            BackgroundWork work,
            News news,
            OddsRows rows,
            OddsFrom start,
            KeptNormals normals,
            JobFolders folders,
            CurrentFolders current,
            Plans plans) {
        this.db = db;
        this.transaction = transaction;
        this.work = work;
        this.news = news;
        this.rows = rows;
        this.start = start;
        this.normals = normals;
        this.folders = folders;
        this.current = current;
        this.plans = plans;
    }

    /**
     * Has the odds of a plan reckoned, from how the job stands when it begins; one that is under way already goes on instead.
     *
     * @throws IllegalArgumentException where the plan is of another folder
     */
    public void begin(Person who, FolderId folder, PlanId plan) {
        begin(who, folder, plan, USUAL);
    }

    void begin(Person who, FolderId folder, PlanId plan, RiskRequest request) {
        who.demand(Operation.RECKON_ODDS, sitesOf(folder));
        transaction.executeWithoutResult(_ -> {
            hold(folder, plan);
            if (!rows.underWay(plan).isEmpty()) return;
            JobId job = work.ask(OddsJob.KIND, Long.toString(plan.value()), Asker.of(who.id(), folder));
            rows.open(job, folder, plan, request);
            tell(folder, plan);
        });
    }

    /** Ends the plan's reckoning without odds; those that it had stay. */
    public void stop(Person who, FolderId folder, PlanId plan) {
        who.demand(Operation.RECKON_ODDS, sitesOf(folder));
        transaction.executeWithoutResult(_ -> {
            hold(folder, plan);
            rows.underWay(plan).forEach(work::stop);
            tell(folder, plan);
        });
    }

    /** Whether the person may have odds of the folder's plans reckoned, which takes every site of it. */
    public boolean mayBegin(Person who, FolderId folder) {
        return who.may(Operation.RECKON_ODDS) && who.reach().coversAll(sitesOf(folder));
    }

    /** How the plan's newest reckoning stands, with the odds of the person's sites; nothing where it never was reckoned. */
    public Optional<OddsState> state(Person who, FolderId folder, PlanId plan) {
        who.demand(Operation.SEE_ODDS);
        demandOfFolder(folder, plan);
        return rows.newest(plan).map(run -> {
            JobRecord job = run.job();
            return new OddsState(
                    Status.valueOf(job.getState().toUpperCase(Locale.ROOT)),
                    run.row().getDone(),
                    run.row().getTrials(),
                    job.getFailure(),
                    odds(who, folder, plan));
        });
    }

    /** Whether the plan's newest reckoning has not ended, and how many trials are done; cheap to ask. */
    public Optional<Integer> underWay(Person who, PlanId plan) {
        who.demand(Operation.SEE_ODDS);
        return rows.newest(plan)
                .filter(run -> run.job().getEndedAt() == null)
                .map(run -> run.row().getDone());
    }

    private @Nullable Odds odds(Person who, FolderId folder, PlanId plan) {
        return rows.kept(plan)
                .map(kept -> {
                    List<SiteId> all = sitesOf(folder);
                    JobFolder now = current.load(folder);
                    Basis basis = Basis.of(now, normals.of(folder), start.of(now, plans.load(plan)));
                    return new Odds(
                            kept.report().within(who.reach(), all),
                            kept.at(),
                            kept.basis().changedTo(basis),
                            who.reach().coversAll(all));
                })
                .orElse(null);
    }

    private List<SiteId> sitesOf(FolderId folder) {
        return folders.load(folder).sites().stream().map(Site::id).toList();
    }

    private void tell(FolderId folder, PlanId plan) {
        news.tell(new NewsItem(TOPIC, folder.value(), null, Long.toString(plan.value())));
    }

    /** Two who ask at once take turns, so that the later one sees what the earlier has begun. */
    private void hold(FolderId folder, PlanId plan) {
        demandOfFolder(folder, plan);
        db.selectOne().from(PLAN).where(PLAN.ID.eq(plan.value())).forUpdate().fetch();
    }

    private void demandOfFolder(FolderId folder, PlanId plan) {
        if (!db.fetchExists(PLAN, PLAN.ID.eq(plan.value()), PLAN.FOLDER_ID.eq(folder.value())))
            throw new IllegalArgumentException(
                    "plan %d is no plan of job folder %d".formatted(plan.value(), folder.value()));
    }
}
