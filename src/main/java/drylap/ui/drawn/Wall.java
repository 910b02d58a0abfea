package drylap.ui.drawn;

import com.fasterxml.jackson.annotation.JsonValue;
import java.util.List;

/** A facade as it stands: courses from the ground up, openings in the order of the folder. */
public record Wall(String title, String heading, List<WallCourse> courses) {
    public record WallCourse(int level, List<Glyph> openings) {}

    /**
     * One opening from the front.
     *
     * @param progress how far the install has come, in a few words
     * @param words the same at length, for those who hear the page
     * @param water whether water would enter as it stands
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
            Part clad) {}

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
