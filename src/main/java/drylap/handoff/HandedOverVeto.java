package drylap.handoff;

import drylap.assembly.WorkLine;
import drylap.kernel.FolderId;
import drylap.kernel.OpeningId;
import drylap.kernel.Trade;
import drylap.progress.UndoVeto;
import drylap.speech.Saying;
import java.util.Optional;
import org.springframework.stereotype.Component;

/** What the window crew handed over is not its own to undo any more. */
@Component
final class HandedOverVeto implements UndoVeto {
    private final Custodies custodies;

    HandedOverVeto(Custodies custodies) {
        this.custodies = custodies;
    }

    @Override
    public Optional<Saying> against(FolderId folder, OpeningId opening, WorkLine line) {
        if (line.trade() != Trade.WINDOW) return Optional.empty();
        var custody = custodies.of(folder, opening);
        return custody.handedOver()
                ? Optional.of(Saying.of(
                        "{0}: the opening is {1}; the follow-on trade can return it", line.saying(), custody.saying()))
                : Optional.empty();
    }
}
