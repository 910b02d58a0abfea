package drylap.planning;

import drylap.kernel.FolderId;
import drylap.persistence.jooq.tables.records.PlanningRunRecord;
import drylap.platform.Job;
import drylap.platform.JobHandler;
import java.time.Duration;
import org.springframework.stereotype.Service;

/**
 * Does a planning run: the first legal plan is saved at once, so that people have one, and the best one at the end. On the way it keeps where
 * the search stands, so that a run goes on from there when its process died or its node goes down.
 */
@Service
final class PlanningJob implements JobHandler {
    static final String KIND = "plan";

    private final CurrentFolders folders;
    private final Plans plans;
    private final PlanningRuns runs;
    private final RunWaypoints waypoints;
    private final Planner planner;
    private final SolverMeters meters;

    PlanningJob(
            CurrentFolders folders,
            Plans plans,
            PlanningRuns runs,
            RunWaypoints waypoints,
            Planner planner,
            SolverMeters meters) {
        this.folders = folders;
        this.plans = plans;
        this.runs = runs;
        this.waypoints = waypoints;
        this.planner = planner;
        this.meters = meters;
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
        KeptWaypoint before = waypoints.of(job.id()).orElse(null);
        job.write(() -> runs.forgetPoints(job.id(), before == null ? Duration.ZERO : before.elapsed()));
        if (run.getPlanId() == null) keepFirst(job, id, folder, request);
        ProgressNotes notes = new ProgressNotes(job, runs, before);
        Trail trail = before == null ? Trail.fresh() : Trail.from(before.place());
        WaypointNotes places = new WaypointNotes(job, waypoints, trail, notes);
        job.eachMoment(notes::write);
        job.eachMoment(places::write);
        PlanRequest left = before == null ? request : request.after(before.elapsed(), before.moves());
        Plan best = planner.plan(folder, left, trail, notes, job::halted);
        if (job.leaving()) {
            places.writeNow();
            return;
        }
        places.close();
        PlanProgress end = notes.closing(best);
        end(job, id, folder, best, end);
        meters.ended(end, end.moves() - (before == null ? 0 : before.moves()));
    }

    private void end(Job job, FolderId id, JobFolder folder, Plan best, PlanProgress end) {
        job.write(() -> {
            runs.note(job.id(), plans.save(id, best, folder));
            runs.note(job.id(), end);
            runs.add(job.id(), RunPoint.of(end));
            waypoints.forget(job.id());
        });
    }

    /** A planner that is told to stop before it begins answers with its first legal plan. */
    private void keepFirst(Job job, FolderId id, JobFolder folder, PlanRequest request) {
        Plan first = planner.plan(folder, request, _ -> {}, () -> true);
        job.write(() -> runs.note(job.id(), plans.save(id, first, folder)));
    }
}
