package drylap.planning;

import drylap.kernel.FolderId;
import drylap.speech.Saying;

/** What came of something put in by hand. */
public sealed interface HandResult {
    /** All of it is stored. */
    record Saved(FolderId folder) implements HandResult {}

    /**
     * Nothing was stored.
     *
     * @param why where, what, and what would be accepted
     */
    record Refused(Saying why) implements HandResult {}
}
