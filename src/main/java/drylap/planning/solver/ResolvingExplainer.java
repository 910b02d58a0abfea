package drylap.planning.solver;

import drylap.kernel.OpeningId;
import drylap.kernel.Task;
import drylap.planning.Explainer;
import drylap.planning.JobFolder;
import drylap.planning.MoveCost;
import drylap.planning.Plan;
import drylap.planning.Remedy;
import drylap.planning.Visit;
import drylap.planning.WhyThere;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Reads reasons off the compiled folder, and finds costs by planning again. */
public final class ResolvingExplainer implements Explainer {
    @Override
    public Optional<WhyThere> why(JobFolder folder, Plan plan, OpeningId opening, Task task) {
        return visit(plan, opening, task).flatMap(visit -> {
            Standing standing = Standing.of(new Replanning(folder, plan, null).without(folder, visit), plan);
            return standing.planned(opening, task).map(one -> new WhyThere(visit, StartReasons.of(standing, one)));
        });
    }

    @Override
    public List<MoveCost> moves(JobFolder folder, Plan plan, OpeningId opening, Task task, @Nullable Instant now) {
        Replanning again = new Replanning(folder, plan, now);
        return visit(plan, opening, task)
                .flatMap(visit -> {
                    Standing standing = Standing.of(again.without(folder, visit), plan);
                    return standing.planned(opening, task)
                            .map(one -> new MoveTrials(folder, again, standing, one).all());
                })
                .orElse(List.of());
    }

    @Override
    public Optional<Remedy> remedy(JobFolder folder, Plan plan, OpeningId opening, Task task, @Nullable Instant now) {
        Replanning again = new Replanning(folder, plan, now);
        return plan.unplanned().stream()
                .filter(one -> one.opening().equals(opening) && one.task() == task)
                .findFirst()
                .flatMap(left -> {
                    Standing standing = Standing.of(again.standing(folder, null), plan);
                    return standing.task(opening, task).map(one -> {
                        WorkTask root = Root.of(standing, one);
                        return new RemedySearch(folder, again, left)
                                .search(new SmallChanges(folder, again.from(), root).all());
                    });
                });
    }

    private static Optional<Visit> visit(Plan plan, OpeningId opening, Task task) {
        return plan.visits().stream()
                .filter(one -> one.opening().equals(opening) && one.task() == task)
                .findFirst();
    }
}
