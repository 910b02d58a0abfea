package drylap.ui.drawn;

import drylap.kernel.OpeningId;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/**
 * The record of one act of handing over, as it is printed.
 *
 * @param title what was done, to what
 * @param facts who, when, where, why; name and value
 * @param lines the openings, each in the state that it was in then
 * @param chain every act at these openings, the oldest first; this one among them
 */
public record HandoffPaper(
        long id,
        String title,
        List<OpeningSheet.Fact> facts,
        List<Line> lines,
        List<UUID> photos,
        List<Link> chain,
        Optional<OpeningId> onlyOpening) {
    public record Line(String opening, String place, String rating, String state) {}

    /** @param self this record itself */
    public record Link(long id, String when, String what, String who, String openings, boolean self) {}
}
