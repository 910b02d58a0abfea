package drylap.moving;

import drylap.audit.MoveVerdict;
import drylap.planning.PlanId;
import java.time.Instant;

/** What became of a move. */
public sealed interface MoveResult {
    /** It is saved: a new plan has the visit there, and it is pinned. */
    record Moved(PlanId plan, MoveVerdict verdict) implements MoveResult {}

    /** It breaks rules; nothing was saved. */
    record Refused(MoveVerdict verdict) implements MoveResult {}

    /** The plan is no longer the one that was seen; nothing was saved. */
    record ChangedMeanwhile(Instant madeAt) implements MoveResult {}

    /** A planning run is under way that does not know of the move and would lay its plan over it; nothing was saved. */
    record Planning() implements MoveResult {}

    /** The task was done meanwhile; nothing was saved. */
    record Done() implements MoveResult {}
}
