package drylap.planning;

import drylap.kernel.FolderId;
import drylap.speech.Saying;
import java.time.Instant;

/** A plan that everybody works by from then on, until the next one. */
public record Publication(PublicationId id, FolderId folder, PlanId plan, Instant at, String by) {
    /** Stands in place of a name where nobody published, but the sample did. */
    static final String SAMPLE = "the sample";

    /** Who published it, as a reader is told. */
    public Saying publisher() {
        return by.equals(SAMPLE) ? Saying.of(SAMPLE) : Saying.asItIs(by);
    }
}
