package drylap.progress;

import drylap.assembly.WorkLine;
import drylap.kernel.FolderId;
import drylap.kernel.OpeningId;
import drylap.speech.Saying;
import java.util.Optional;

/** Says why a line may not be undone, for reasons that the log does not know; asked in the transaction that would undo it. */
@FunctionalInterface
public interface UndoVeto {
    Optional<Saying> against(FolderId folder, OpeningId opening, WorkLine line);
}
