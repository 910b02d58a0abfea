package drylap.roughopening;

import drylap.kernel.Coded;

/** What is measured of a rough opening: sides at three points, both diagonals, and how far jambs and sill are off. */
public enum RoughPlace implements Coded {
    WIDTH_SILL("width-sill", "Width at the sill", true),
    WIDTH_MIDDLE("width-middle", "Width in the middle", true),
    WIDTH_HEAD("width-head", "Width at the head", true),
    HEIGHT_LEFT("height-left", "Height at the left", true),
    HEIGHT_MIDDLE("height-middle", "Height in the middle", true),
    HEIGHT_RIGHT("height-right", "Height at the right", true),
    DIAGONAL_RISING("diagonal-rising", "Diagonal from sill left to head right", true),
    DIAGONAL_FALLING("diagonal-falling", "Diagonal from head left to sill right", true),
    PLUMB_LEFT("plumb-left", "Left jamb out of plumb, over its height", false),
    PLUMB_RIGHT("plumb-right", "Right jamb out of plumb, over its height", false),
    LEVEL_SILL("level-sill", "Sill out of level, over its width", false);

    private final String code;
    private final String words;
    private final boolean side;

    RoughPlace(String code, String words, boolean side) {
        this.code = code;
        this.words = words;
        this.side = side;
    }

    @Override
    public String code() {
        return code;
    }

    public String words() {
        return words;
    }

    /** A length of the opening itself, not how far something is off. */
    public boolean side() {
        return side;
    }

    /** The least and the most that can be meant, in whole millimetres. */
    public int leastMm() {
        return side ? 100 : 0;
    }

    public int mostMm() {
        return side ? 30_000 : 300;
    }
}
