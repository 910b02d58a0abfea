package drylap.ui.planner;

import drylap.intake.FolderReading;
import drylap.intake.Problem;
import drylap.speech.Saying;
import java.util.ArrayList;
import java.util.List;

/** What is wrong with a file that somebody brought in, a sentence for each place; what is found there is told as the reader of files words it. */
final class FileProblems {
    private FileProblems() {}

    static List<Saying> of(FolderReading.Refused refused) {
        List<Saying> all = new ArrayList<>();
        for (Problem one : refused.problems())
            all.add(Saying.of("{0}: {1} – {2} is accepted", one.place(), wrong(one), one.accepted()));
        if (refused.more() > 0) all.add(Saying.of("… and {0} more", refused.more()));
        return all;
    }

    private static String wrong(Problem one) {
        return one.value().isEmpty() ? one.wrong() : "%s (%s)".formatted(one.wrong(), one.shown());
    }
}
