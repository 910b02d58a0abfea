package drylap.planning;

import drylap.kernel.OpeningId;
import drylap.kernel.Task;
import drylap.planning.solver.ResolvingExplainer;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Explains a plan from its folder: a pure function; costs are found by planning again, not guessed. */
public interface Explainer {
    /** The one that everything uses. */
    static Explainer standard() {
        return new ResolvingExplainer();
    }

    /** Why a visit is there and then; nothing where the plan has no such visit or its task is done. */
    Optional<WhyThere> why(JobFolder folder, Plan plan, OpeningId opening, Task task);

    /**
     * What it would cost to move a visit a day, to each other crew that could do it, or first in line of its day.
     *
     * @param now what begins before stays, and nothing goes there; absent: the plan's start
     */
    List<MoveCost> moves(JobFolder folder, Plan plan, OpeningId opening, Task task, @Nullable Instant now);

    /** The smallest of some changes that would plan a task; nothing where the plan does not leave it out. */
    Optional<Remedy> remedy(JobFolder folder, Plan plan, OpeningId opening, Task task, @Nullable Instant now);
}
