package drylap.planning.solver;

import drylap.planning.CostDifference;
import drylap.planning.JobFolder;
import drylap.planning.Ledger;
import drylap.planning.Plan;
import drylap.planning.Remedy;
import drylap.planning.SmallChange;
import drylap.planning.UnplannedTask;
import java.util.List;

/** Tries changes of the folder from small to large until one plans the task. */
final class RemedySearch {
    private final JobFolder folder;
    private final Replanning again;
    private final UnplannedTask asked;
    private final Ledger before;

    RemedySearch(JobFolder folder, Replanning again, UnplannedTask asked) {
        this.folder = folder;
        this.again = again;
        this.asked = asked;
        before = again.ledger(folder);
    }

    Remedy search(List<SmallChange> changes) {
        int tried = 0;
        for (SmallChange change : changes) {
            tried++;
            Plan plan = again.solve(change.applyTo(folder), null);
            if (helps(plan))
                return new Remedy(
                        asked, new Remedy.Found(change, plan, CostDifference.of(before, plan.ledger())), tried);
        }
        return new Remedy(asked, null, tried);
    }

    /** The task is planned, and not at the cost of another. */
    private boolean helps(Plan plan) {
        return plan.ledger().hard() == 0
                && plan.ledger().medium() < before.medium()
                && Replanning.plans(plan, asked.opening(), asked.task());
    }
}
