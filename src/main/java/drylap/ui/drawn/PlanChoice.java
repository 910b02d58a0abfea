package drylap.ui.drawn;

import drylap.planning.Plan;
import drylap.planning.PlanId;
import drylap.planning.Publication;
import drylap.planning.StoredPlan;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The plan that people work by, and the newest one, which may be a proposal that nobody has published yet.
 *
 * @param lookAtPublished show the published plan although there is a newer proposal
 */
public record PlanChoice(
        @Nullable StoredPlan newest,
        @Nullable Publication publication,
        @Nullable Plan published,
        boolean lookAtPublished) {
    public static final PlanChoice NONE = new PlanChoice(null, null, null, false);

    public Optional<Plan> shown() {
        if (lookAtPublished && published != null) return Optional.of(published);
        return Optional.ofNullable(newest).map(StoredPlan::plan);
    }

    public Optional<PlanId> shownId() {
        if (lookAtPublished && published != null)
            return Optional.ofNullable(publication).map(Publication::plan);
        return Optional.ofNullable(newest).map(StoredPlan::id);
    }

    /** The newest plan, where people do not work by it yet. */
    public Optional<StoredPlan> proposal() {
        return Optional.ofNullable(newest)
                .filter(plan -> publication == null
                        || plan.id().value() > publication.plan().value());
    }
}
