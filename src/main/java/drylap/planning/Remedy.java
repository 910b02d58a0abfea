package drylap.planning;

import org.jspecify.annotations.Nullable;

/**
 * What would plan a task that is left out.
 *
 * @param found the first of the changes tried with which the task is planned and nothing dearer is left out instead; null: none
 * @param tried how many changes were tried
 */
public record Remedy(UnplannedTask task, @Nullable Found found, int tried) {
    /** A change that plans the task, shown by the plan that results from it. */
    public record Found(SmallChange change, Plan plan, CostDifference more) {}
}
