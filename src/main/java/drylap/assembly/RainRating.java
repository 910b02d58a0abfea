package drylap.assembly;

import drylap.kernel.Coded;

/** What rain does to an opening as it stands; says nothing about whether anyone may work there. */
public enum RainRating implements Coded {
    OPEN("R0", "open to rain: never leave it so with rain due"),
    COVER_ONLY("R1", "may stay only under a secured cover"),
    LIGHT_RAIN("R2", "sheds light rain for a while, by a bonded edge or for want of wind"),
    RAIN_SAFE("R3", "rain-safe by its laps alone");

    private final String code;
    private final String words;

    RainRating(String code, String words) {
        this.code = code;
        this.words = words;
    }

    @Override
    public String code() {
        return code;
    }

    public String words() {
        return words;
    }

    /** Nothing needs to be done before rain. */
    public boolean mayBeLeft() {
        return compareTo(LIGHT_RAIN) >= 0;
    }
}
