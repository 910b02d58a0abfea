package drylap.planning;

import drylap.speech.Saying;

/** What came of changing a rule. */
public sealed interface RuleChangeResult {
    record Changed(RuleChange change) implements RuleChangeResult {}

    /** Someone else changed it since the person looked; nothing was changed now. */
    record ChangedMeanwhile(RuleChange newer) implements RuleChangeResult {}

    /** Nothing was changed; {@code why} says what would be accepted. */
    record Refused(Saying why) implements RuleChangeResult {}
}
