package drylap.planning;

/** A stored plan. */
public record PlanId(long value) {}
