package drylap.crews;

import drylap.speech.Saying;
import java.time.Instant;

/** What came of a change to absences. */
public sealed interface AbsenceResult {
    record Added(Absence absence) implements AbsenceResult {}

    record Withdrawn(Absence absence) implements AbsenceResult {}

    /** Someone else was quicker to withdraw it; nothing was changed now. */
    record WithdrawnMeanwhile(String by, Instant at) implements AbsenceResult {}

    /** Nothing was changed; {@code why} says what would be accepted. */
    record Refused(Saying why) implements AbsenceResult {}
}
