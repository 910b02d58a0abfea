package drylap.papers;

/**
 * An opening seen from the front, layer by layer.
 *
 * @param water whether water would enter as it stands
 * @param edgeHeld the apron's lower edge is fastened or tucked over, not free
 */
public record Front(
        int widthMm,
        int heightMm,
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
        boolean edgeHeld) {
    /** In place, owed to an opening that has been begun, another time's turn, or not of this design. */
    public enum Part {
        ON,
        MISSING,
        LATER,
        NONE
    }
}
