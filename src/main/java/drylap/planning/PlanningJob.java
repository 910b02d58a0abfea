package drylap.planning;

import drylap.kernel.FolderId;
import drylap.persistence.jooq.tables.records.PlanningRunRecord;
import drylap.platform.Job;
import drylap.platform.JobHandler;
import org.springframework.stereotype.Service;

/**
 * Does a planning run: the first legal plan is saved at once, so that people have one, and the best one at the end. A run
 * that is begun again after its process died starts from its request.
 */
@Service
final class PlanningJob implements JobHandler {
    static final String KIND = "plan";

    private final CurrentFolders folders;
    private final Plans plans;
    private final PlanningRuns runs;
    private final Planner planner;

    PlanningJob(CurrentFolders folders, Plans plans, PlanningRuns runs, Planner planner) {
        this.folders = folders;
        this.plans = plans;
        this.runs = runs;
        this.planner = planner;
    }

    @Override
    public String kind() {
        return KIND;
    }

    @Override
    public void run(Job job) {
        PlanningRunRecord run = runs.of(job.id());
        FolderId id = new FolderId(run.getFolderId());
        JobFolder folder = folders.load(id);
        PlanRequest request = PlanningRuns.request(run);
        job.write(() -> runs.forgetPoints(job.id()));
        if (run.getPlanId() == null) keepFirst(job, id, folder, request);
        ProgressNotes notes = new ProgressNotes(job, runs);
        job.eachMoment(notes::write);
        Plan best = planner.plan(folder, request, notes, job::halted);
        PlanProgress end = notes.closing(best);
        job.write(() -> {
            runs.note(job.id(), plans.save(id, best, folder));
            runs.note(job.id(), end);
            runs.add(job.id(), RunPoint.of(end));
        });
    }

    /** A planner that is told to stop before it begins answers with its first legal plan. */
    private void keepFirst(Job job, FolderId id, JobFolder folder, PlanRequest request) {
        Plan first = planner.plan(folder, request, _ -> {}, () -> true);
        job.write(() -> runs.note(job.id(), plans.save(id, first, folder)));
    }
}
