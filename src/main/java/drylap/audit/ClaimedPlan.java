package drylap.audit;

import drylap.kernel.OpeningId;
import drylap.kernel.Task;
import drylap.planning.CoverNow;
import drylap.planning.Ledger;
import drylap.planning.OpenWindow;
import drylap.planning.Plan;
import drylap.planning.UnplannedTask;
import drylap.planning.Visit;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** A plan as somebody claims it, from whatever source and in whatever order; what is absent is not judged. */
public record ClaimedPlan(
        List<Visit> visits,
        @Nullable List<Unplanned> unplanned,
        @Nullable List<CoverNow> coverNow,
        @Nullable List<OpenWindow> openHours,
        @Nullable Ledger ledger) {
    /** @param reason as written, known or not */
    public record Unplanned(OpeningId opening, Task task, String reason) {}

    public ClaimedPlan {
        visits = List.copyOf(visits);
    }

    public static ClaimedPlan of(Plan plan) {
        return new ClaimedPlan(
                plan.visits(), unplanned(plan.unplanned()), plan.coverNow(), plan.openHours(), plan.ledger());
    }

    /** The planner's own list, as anybody's claim. */
    public static List<Unplanned> unplanned(List<UnplannedTask> tasks) {
        return tasks.stream()
                .map(task ->
                        new Unplanned(task.opening(), task.task(), task.reason().code()))
                .toList();
    }
}
