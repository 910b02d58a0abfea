package drylap.planning;

import java.time.Duration;

/** How far a planning run has come; costs are of the best plan so far. */
public record PlanProgress(Duration elapsed, long moves, long medium, long soft, int planned, int unplanned) {}
