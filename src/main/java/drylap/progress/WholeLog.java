package drylap.progress;

import drylap.kernel.FolderId;
import drylap.kernel.OpeningId;
import drylap.security.Operation;
import drylap.security.Person;
import java.util.List;
import java.util.Map;
import org.springframework.stereotype.Service;

/** The log as it was written, for those who ask how the work went rather than how it stands. */
@Service
public final class WholeLog {
    private final Marks marks;

    WholeLog(Marks marks) {
        this.marks = marks;
    }

    /** The entries at the person's sites by opening, each opening's in their order, undone ones included. */
    public Map<OpeningId, List<Mark>> of(Person who, FolderId folder) {
        who.demand(Operation.SEE_OPENINGS);
        return marks.of(folder, who.reach());
    }
}
