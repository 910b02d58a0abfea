package drylap.planning;

import drylap.kernel.FolderId;
import java.time.Instant;

/** A plan that everybody works by from then on, until the next one. */
public record Publication(PublicationId id, FolderId folder, PlanId plan, Instant at, String by) {}
