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
    Plan plan(JobFolder folder, PlanRequest request, Consumer<PlanProgress> watcher, BooleanSupplier stop);
}
