package drylap.moving;

import drylap.kernel.FolderId;
import drylap.kernel.OpeningId;
import drylap.kernel.Task;
import drylap.planning.PlanId;

/**
 * A visit as someone looks at it.
 *
 * @param newest the folder's newest plan when they looked
 * @param plan the plan that they look at: that one, or the published one
 */
public record VisitSeen(FolderId folder, PlanId newest, PlanId plan, OpeningId opening, Task task) {}
