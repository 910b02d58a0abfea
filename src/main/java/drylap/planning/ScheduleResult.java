package drylap.planning;

import drylap.speech.Saying;

/** What came of taking in a window schedule. */
public sealed interface ScheduleResult {
    /** All of it was taken in. */
    record Taken(int added, int changed) implements ScheduleResult {}

    /** Somebody marked or changed one of the openings since the person looked; nothing was changed now. */
    record ChangedMeanwhile(Saying what) implements ScheduleResult {}

    /** Nothing was changed; {@code why} says what would be accepted. */
    record Refused(Saying why) implements ScheduleResult {}
}
