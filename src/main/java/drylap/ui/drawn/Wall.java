package drylap.ui.drawn;

import com.fasterxml.jackson.annotation.JsonValue;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** A facade as it stands: courses from the ground up, openings in the order of the folder. */
public record Wall(String title, String heading, List<WallCourse> courses) {
    public record WallCourse(int level, List<Glyph> openings) {}

    /**
     * One opening from the front.
     *
     * @param progress how far the install has come, in a few words
     * @param words the same at length, for those who hear the page
     * @param water whether water would enter as it stands
     * @param second the second barrier, where the design has one
     * @param edgeHeld the apron's lower edge is fastened or tucked over, not free
     * @param hand in whose hands it is, where the drawing tells
     */
    public record Glyph(
            String opening,
            int widthMm,
            int heightMm,
            String progress,
            String words,
            String rating,
            boolean water,
            Part apron,
            Part pan,
            Part window,
            Part jambs,
            Part head,
            Part flap,
            Part wrap,
            Part second,
            Part clad,
            boolean edgeHeld,
            @Nullable Hand hand) {}

    public enum Part {
        /** In place. */
        ON,
        /** Owed to an opening that has been begun. */
        MISSING,
        /** Not begun, or another trade's turn. */
        LATER,
        /** This kind of opening has none. */
        NONE;

        @JsonValue
        String code() {
            return name().toLowerCase(java.util.Locale.ROOT);
        }
    }
}
