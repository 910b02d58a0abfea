package drylap.windowschedule;

import java.util.List;

/** What came of opening a file: its sheets, or why it is refused. */
public sealed interface FileReading {
    /**
     * @param sheets those with any text, in the order of the file
     * @param understood how the file as a whole was understood, for people to read; empty where its cells say all
     */
    record Read(String file, List<Sheet> sheets, List<String> understood) implements FileReading {
        public Read {
            sheets = List.copyOf(sheets);
            understood = List.copyOf(understood);
        }
    }

    /**
     * Nothing was read.
     *
     * @param where the sheet, row or part that is meant; blank for the file
     */
    record Refused(String file, String where, String wrong, String accepted) implements FileReading {
        public String text() {
            return "%s%s: %s \u2013 %s is accepted"
                    .formatted(file, where.isEmpty() ? "" : ", " + where, wrong, accepted);
        }
    }
}
