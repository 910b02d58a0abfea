package drylap.ui.planner;

import drylap.intake.FolderReading;
import drylap.intake.FolderWords;
import drylap.intake.Problem;
import drylap.speech.Saying;
import java.util.ArrayList;
import java.util.List;

/** What is wrong with a file that somebody brought in, a sentence for each place. */
final class FileProblems {
    private FileProblems() {}

    static List<Saying> of(FolderReading.Refused refused) {
        List<Saying> all = new ArrayList<>();
        for (Problem one : refused.problems())
            all.add(Saying.of("{0}: {1} – {2} is accepted", place(one), wrong(one), FolderWords.read(one.accepted())));
        if (refused.more() > 0) all.add(Saying.of("… and {0} more", refused.more()));
        return all;
    }

    private static Saying place(Problem one) {
        String line = one.line() > 0 ? "%s:%d".formatted(one.file(), one.line()) : one.file();
        return one.column().isEmpty()
                ? Saying.asItIs(line)
                : Saying.of("{0} {1}", line, FolderWords.readCell(one.column()));
    }

    private static Saying wrong(Problem one) {
        Saying what = FolderWords.read(one.wrong());
        return one.value().isEmpty() ? what : Saying.of("{0} ({1})", what, FolderWords.readCell(one.shown()));
    }
}
