package drylap.ui.drawn;

import drylap.kernel.OpeningId;
import drylap.ui.drawn.Aprons.LineToMark;
import drylap.ui.drawn.Aprons.Seen;
import java.util.List;

/**
 * What the follow-on trade asks about one opening.
 *
 * @param hand in whose hands it is, by whom and when
 * @param facts apron, lap, rain, sun and what is planned, a line each
 * @param seen the opening as it was looked at
 * @param redo the done lines of the window crew from which it could be redone
 */
public record ApronSheet(
        OpeningId opening,
        String place,
        Wall.Glyph glyph,
        String hand,
        List<String> facts,
        Seen seen,
        boolean acceptable,
        boolean returnable,
        List<LineToMark> toMark,
        List<Redo> redo) {
    public record Redo(String code, String text) {}
}
