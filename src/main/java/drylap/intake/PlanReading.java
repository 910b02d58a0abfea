package drylap.intake;

import java.util.List;

/** What came of reading a plan folder: all of it, or nothing and every problem together. */
public sealed interface PlanReading<T> {
    record Read<T>(T plan) implements PlanReading<T> {}

    /** @param more how many problems were found beyond those listed */
    record Refused<T>(List<Problem> problems, int more) implements PlanReading<T> {
        public Refused {
            problems = List.copyOf(problems);
        }

        /** One problem a line. */
        public String text() {
            return new FolderReading.Refused(problems, more).text();
        }
    }
}
