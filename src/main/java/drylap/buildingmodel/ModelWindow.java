package drylap.buildingmodel;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A window as the model has it; what the model does not tell is blank or null, and why stands in what is left open.
 *
 * @param entity its number in the file
 * @param widthMm overall, of the frame, as is the height
 * @param sillMm how far the window's lower edge lies above the floor of its storey
 * @param alongMm from the leftmost end of a wall or window of its plane to the window's left edge, seen from outside
 */
public record ModelWindow(
        int entity,
        String globalId,
        String tag,
        String name,
        String type,
        String material,
        ModelStorey storey,
        @Nullable Double widthMm,
        @Nullable Double heightMm,
        @Nullable Double sillMm,
        Facing facing,
        @Nullable Double alongMm,
        List<String> leftOpen) {
    public ModelWindow {
        leftOpen = List.copyOf(leftOpen);
    }

    /** The tag, or else the name; blank where the model has neither. */
    public String mark() {
        return tag.isEmpty() ? name : tag;
    }

    /** Where the mark comes from. */
    public String markedBy() {
        return mark().isEmpty() ? "" : tag.isEmpty() ? "Name" : "Tag";
    }

    /**
     * The storey that a window stands in; blank where the model has none.
     *
     * @param elevationMm of its floor above the building's zero, as the model says it
     */
    public record ModelStorey(
            String name, String building, @Nullable Double elevationMm) {
        static final ModelStorey NONE = new ModelStorey("", "", null);
    }

    /** Which way the window looks. */
    public sealed interface Facing {
        /** A wall's name and number in the file; blank where the window has no wall. */
        String wall();

        /**
         * @param azimuthDeg of the outward normal, clockwise from true north, to a tenth, below 360
         * @param plane its place among the parallel planes of walls that look the same way, from 1 at the outermost
         */
        record Told(String wall, double azimuthDeg, int plane, int planes) implements Facing {}

        /** It cannot be told from the model, so a person has to. */
        record NotTold(String wall, String why) implements Facing {}
    }
}
