package drylap.planning;

import drylap.planning.solver.LocalSearchPlanner;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;

/** The main job: a pure function from a job folder to a plan, that can be watched and stopped. */
public interface Planner {
    /** The planner that everything uses: a first plan by construction, then local search. */
    static Planner standard() {
        return new LocalSearchPlanner();
    }

    /**
     * Plans the folder.
     *
     * @param watcher told from time to time, and once at the first legal plan
     * @param stop asked often; once it says yes, the best plan so far is returned
     */
    default Plan plan(JobFolder folder, PlanRequest request, Consumer<PlanProgress> watcher, BooleanSupplier stop) {
        return plan(folder, request, Trail.fresh(), watcher, stop);
    }

    /**
     * As above, on a trail: it goes on from where an earlier search of the folder stood, if the trail says, and tells the trail where
     * it stands.
     */
    Plan plan(JobFolder folder, PlanRequest request, Trail trail, Consumer<PlanProgress> watcher, BooleanSupplier stop);
}
