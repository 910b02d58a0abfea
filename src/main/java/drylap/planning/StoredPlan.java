package drylap.planning;

import java.time.Instant;

/** A plan with its number, by which it is published. */
public record StoredPlan(PlanId id, Instant madeAt, Plan plan) {}
