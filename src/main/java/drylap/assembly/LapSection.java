package drylap.assembly;

import drylap.assembly.drawing.Sheet;
import drylap.speech.Speech;

/**
 * The drawing of an opening as it stands: head, jamb and sill cut through, layers in order from the wall to the outside,
 * with the way that water takes. It is one SVG element without scripts; its colours are CSS custom properties that start with
 * {@code --lap-}, its water paths carry the class {@code water-path}.
 */
public record LapSection(AsBuilt built, Layout layout, Colours colours, Speech say) {
    /** With its words in English. */
    public LapSection(AsBuilt built, Layout layout, Colours colours) {
        this(built, layout, colours, Speech.ENGLISH);
    }

    /** Three cuts beside one another, or below one another for a phone. */
    public enum Layout {
        WIDE,
        STACKED
    }

    /** Where the colours come from. */
    public enum Colours {
        /** The page's custom properties, else the page's own light or dark scheme. */
        PAGE,
        /** As PAGE, but a file of its own that follows the reader's light or dark setting. */
        FILE,
        /** Plain colours on white, for what knows no custom properties. */
        PRINT
    }

    public static String svg(AsBuilt built, Layout layout) {
        return svg(built, layout, Speech.ENGLISH);
    }

    public static String svg(AsBuilt built, Layout layout, Speech say) {
        return new LapSection(built, layout, Colours.PAGE, say).svg();
    }

    public String svg() {
        return new Sheet(this).svg();
    }
}
