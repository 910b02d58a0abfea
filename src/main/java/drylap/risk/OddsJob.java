package drylap.risk;

import drylap.climate.KeptNormals;
import drylap.climate.MonthlyNormals;
import drylap.kernel.FolderId;
import drylap.persistence.jooq.tables.records.OddsRunRecord;
import drylap.planning.CurrentFolders;
import drylap.planning.JobFolder;
import drylap.planning.Plan;
import drylap.planning.PlanId;
import drylap.planning.Plans;
import drylap.platform.Job;
import drylap.platform.JobHandler;
import drylap.platform.News;
import drylap.platform.NewsItem;
import drylap.platform.Processors;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.atomic.AtomicInteger;
import org.springframework.stereotype.Service;

/** Reckons the odds of a plan. One that is begun again after its process died begins its trials again. */
@Service
final class OddsJob implements JobHandler {
    static final String KIND = "odds";

    private final CurrentFolders folders;
    private final Plans plans;
    private final OddsRows rows;
    private final OddsFrom start;
    private final KeptNormals normals;
    private final News news;
    private final Clock clock;

    OddsJob(
            CurrentFolders folders,
            Plans plans,
            OddsRows rows,
            OddsFrom start,
            KeptNormals normals,
            News news,
            Clock clock) {
        this.folders = folders;
        this.plans = plans;
        this.rows = rows;
        this.start = start;
        this.normals = normals;
        this.news = news;
        this.clock = clock;
    }

    @Override
    public String kind() {
        return KIND;
    }

    @Override
    public void run(Job job) {
        OddsRunRecord run = rows.of(job.id());
        FolderId id = new FolderId(run.getFolderId());
        PlanId plan = new PlanId(run.getPlanId());
        JobFolder folder = folders.load(id);
        Plan asked = plans.load(plan);
        Instant from = start.of(folder, asked);
        List<MonthlyNormals> climate = normals.of(id);
        RiskRequest request = new RiskRequest(run.getTrials(), run.getSeed(), from, climate);
        AtomicInteger done = new AtomicInteger();
        job.eachMoment(() -> job.write(() -> rows.note(job.id(), done.get())));
        reckon(folder, asked, request, done, job)
                .ifPresent(report -> job.write(() -> {
                    rows.keep(
                            job.id(),
                            plan,
                            new OddsRows.Kept(report, Basis.of(folder, climate, from), clock.instant()));
                    news.tell(new NewsItem(OddsRuns.TOPIC, id.value(), null, Long.toString(plan.value())));
                }));
    }

    private static Optional<RiskReport> reckon(
            JobFolder folder, Plan plan, RiskRequest request, AtomicInteger done, Job job) {
        try (ForkJoinPool pool = new ForkJoinPool(Processors.forBackgroundWork())) {
            return Risk.of(
                    folder, plan, request, trials -> done.accumulateAndGet(trials, Math::max), job::halted, pool);
        }
    }
}
