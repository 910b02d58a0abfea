package drylap.ui.drawn;

import drylap.assembly.RainCheck;
import drylap.kernel.FolderId;
import drylap.progress.Exposed;
import drylap.progress.LineDone;
import drylap.progress.OpeningState;
import drylap.sites.Opening;
import java.util.Collection;
import java.util.List;

/** Openings as a log could say that they stand. */
final class Standing {
    private Standing() {}

    static OpeningState of(Opening opening, Collection<String> done, Exposed... exposures) {
        var list = opening.workList();
        var built = list.built(done);
        return new OpeningState(
                new FolderId(1),
                opening,
                list.lines().stream()
                        .filter(line -> done.contains(line.code()))
                        .map(line -> new LineDone(line, null, null))
                        .toList(),
                built,
                RainCheck.of(built),
                list.next(done),
                List.of(exposures),
                null,
                7);
    }

    static OpeningState asImported(Opening opening) {
        return of(opening, opening.workList().doneBy(opening.done()));
    }
}
