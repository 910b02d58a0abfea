package drylap.windowschedule;

import java.util.List;

/** What came of opening a file: its sheets, or why it is refused. */
public sealed interface FileReading {
    /** @param sheets those with any text, in the order of the file */
    record Read(String file, List<Sheet> sheets) implements FileReading {
        public Read {
            sheets = List.copyOf(sheets);
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
