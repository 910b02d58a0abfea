package drylap.progress;

import drylap.kernel.FolderId;
import drylap.kernel.OpeningId;
import drylap.security.NotAllowed;
import drylap.security.Operation;
import drylap.security.Person;
import java.util.List;
import java.util.Map;
import org.springframework.stereotype.Service;

/** The log as it was written, for those who ask how the work went rather than how it stands. */
@Service
public final class WholeLog {
    private final Marks marks;
    private final OpeningStates states;

    WholeLog(Marks marks, OpeningStates states) {
        this.marks = marks;
        this.states = states;
    }

    /**
     * The entries of one opening in their order, undone ones included.
     *
     * @throws NotAllowed where the opening is not the person's to see, or is not there
     */
    public List<Mark> of(Person who, FolderId folder, OpeningId opening) {
        return marks.of(folder, states.openingFor(who, folder, opening).id());
    }

    /** The entries at the person's sites by opening, each opening's in their order, undone ones included. */
    public Map<OpeningId, List<Mark>> of(Person who, FolderId folder) {
        who.demand(Operation.SEE_OPENINGS);
        return marks.of(folder, who.reach());
    }
}
