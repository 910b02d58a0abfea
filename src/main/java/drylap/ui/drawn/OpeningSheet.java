package drylap.ui.drawn;

import java.util.List;

/**
 * Everything that a person at the wall asks about one opening.
 *
 * @param facts how it is designed, as name and value
 * @param ratingCode R0 open to R3 safe by laps
 * @param weaknesses what speaks against a better rating
 * @param water where the water goes that is put on it now, one line a way
 * @param section the section through the laps, an SVG, its cuts beside one another
 * @param tallSection the same with its cuts below one another
 */
public record OpeningSheet(
        String opening,
        String place,
        Wall.Glyph glyph,
        List<Fact> facts,
        List<Line> lines,
        String ratingCode,
        String ratingWords,
        boolean mayBeLeft,
        List<String> weaknesses,
        String apron,
        List<String> water,
        String section,
        String tallSection,
        String sectionCaption,
        List<String> advice,
        List<Planned> planned) {
    public record Fact(String name, String value) {}

    /** A line of the list that the crew ticks. */
    public record Line(int number, String text, Standing standing, boolean install) {}

    public enum Standing {
        DONE,
        NEXT,
        LATER
    }

    /** @param when the visit, or why there is none */
    public record Planned(String task, String taskCode, String when, boolean isPlanned) {}
}
