package drylap.intake;

import drylap.planning.JobFolder;
import java.util.List;
import java.util.stream.Collectors;

/** What came of reading a job folder: all of it, or nothing and every problem together. */
public sealed interface FolderReading {
    /** @param notes what a person should know though nothing is wrong: files ignored, where the forecast ends */
    record Read(JobFolder folder, List<String> notes) implements FolderReading {
        public Read {
            notes = List.copyOf(notes);
        }
    }

    /** @param more how many problems were found beyond those listed */
    record Refused(List<Problem> problems, int more) implements FolderReading {
        public Refused {
            problems = List.copyOf(problems);
        }

        static Refused of(Problems problems) {
            return new Refused(problems.kept(), problems.more());
        }

        /** One problem a line. */
        public String text() {
            String lines = problems.stream().map(Problem::toString).collect(Collectors.joining("\n"));
            return more == 0 ? lines : lines + "\n… and %d more".formatted(more);
        }
    }
}
