package drylap.planning;

import drylap.speech.Saying;

/** What came of an answer on install minutes. */
public sealed interface LabourResult {
    record Answered(LabourAnswer answer) implements LabourResult {}

    /** Someone else answered since the person looked; nothing was changed now. */
    record AnsweredMeanwhile(LabourAnswer newer) implements LabourResult {}

    /** Nothing was changed; {@code why} says what would be accepted. */
    record Refused(Saying why) implements LabourResult {}
}
