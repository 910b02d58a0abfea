package drylap.assembly;

/** Sizes of strips and laps. The maker's instructions come first; these are the trade's defaults. */
public final class Dimensions {
    /** Upper barrier sheet over lower: 2 in. Source: IRC R703.2. */
    public static final Length BARRIER_HORIZONTAL_LAP = Length.inches(2);
    /** Barrier at upright joints: 6 in. Source: IRC R703.2. */
    public static final Length BARRIER_JOINT_LAP = Length.inches(6);
    /** Each end of the apron that stays unfastened: 9 in (230 mm). Source: AAMA 2400-10, 5.7.3.3. */
    public static final Length APRON_FREE_END = Length.inches(9);
    /** Narrowest flashing strip: 9 in. Source: trade texts in the line of AAMA 2400. */
    public static final Length NARROWEST_STRIP = Length.inches(9);

    private static final Length HEAD_FLASHING_COVERS = Length.inches(0.5);

    private Dimensions() {}

    /** Shortest apron: the rough opening and both jamb flashings. Source: AAMA 2400-10, Note 3. */
    public static Length apronLength(Length roughOpeningWidth, Length jambFlashingWidth) {
        return roughOpeningWidth.plus(jambFlashingWidth).plus(jambFlashingWidth);
    }

    /**
     * How far jamb flashing runs up past the rough opening: half an inch less than the head flashing is wide, so that the
     * barrier lies flat over it. From memory of ASTM E2112 and AAMA 2400.
     */
    public static Length jambFlashingAboveOpening(Length headFlashingWidth) {
        return headFlashingWidth.minus(HEAD_FLASHING_COVERS);
    }

    public static boolean horizontalLapHolds(Length lap) {
        return lap.meets(BARRIER_HORIZONTAL_LAP);
    }

    public static boolean jointLapHolds(Length lap) {
        return lap.meets(BARRIER_JOINT_LAP);
    }
}
