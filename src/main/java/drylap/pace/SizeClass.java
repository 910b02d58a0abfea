package drylap.pace;

import drylap.sites.Opening;

/** Openings that go in alike: one person carries a small one, and a large one wants more hands. Bounds: common practice, no source. */
public enum SizeClass {
    SMALL("under 1.5 m²"),
    MEDIUM("1.5 to 3 m²"),
    LARGE("over 3 m²");

    private static final double SMALL_BELOW_M2 = 1.5;
    private static final double LARGE_ABOVE_M2 = 3;

    private final String words;

    SizeClass(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }

    static SizeClass of(Opening opening) {
        double squareMetres = opening.widthMm() * 1e-6 * opening.heightMm();
        if (squareMetres < SMALL_BELOW_M2) return SMALL;
        return squareMetres > LARGE_ABOVE_M2 ? LARGE : MEDIUM;
    }
}
