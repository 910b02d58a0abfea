package drylap.assembly;

/**
 * What decides how far an exposed edge can be trusted.
 *
 * @param headEdgeBonded the head flashing is self-adhered, or its top edge is sealed to the sheathing
 * @param skinned the sealant has skinned
 * @param windy wind can lift a free lower edge
 */
public record Conditions(boolean headEdgeBonded, boolean skinned, boolean windy) {
    public static final Conditions USUAL = new Conditions(true, true, false);
    public static final Conditions WINDY = new Conditions(true, true, true);
    /** The head flashing is held by fasteners only, its top edge is not sealed. */
    public static final Conditions HEAD_EDGE_LOOSE = new Conditions(false, true, false);

    boolean headEdgeHolds() {
        return headEdgeBonded && skinned;
    }
}
