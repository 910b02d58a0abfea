package drylap.ui.drawn;

import drylap.ui.drawn.Wall.Glyph;
import java.util.List;

/**
 * What to do at one site before the rain.
 *
 * @param rain when it comes, in words
 * @param minutes until the rain that is reckoned with; below 0: none
 * @param nothing why there is nothing to do; empty where there is something
 * @param stops in the order in which to do them
 * @param left what stays open when the rain comes
 * @param remarks what whoever follows the order should know of it
 */
public record RainCallSheet(
        String title,
        String rain,
        int minutes,
        String nothing,
        String water,
        List<Stop> stops,
        List<Left> left,
        List<Course> courses,
        List<String> remarks) {

    /**
     * One opening to go to.
     *
     * @param close else cover
     * @param act the same in words
     * @param when from when to when, and how long it takes
     * @param water expected in, so and if it were left
     */
    public record Stop(
            String opening, String place, boolean close, String act, String when, String water, Glyph glyph) {}

    public record Left(String opening, String place, String water) {}

    /** Where a crew may stand: one opening stands for its whole course. */
    public record Course(String opening, String words) {}
}
