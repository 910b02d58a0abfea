package drylap.takeoff;

import drylap.kernel.Coded;

/** How much of a site is taken off. */
public enum Extent implements Coded {
    /** What is not on yet. */
    LEFT("left"),
    /** All of it, as if nothing were on yet. */
    WHOLE("whole");

    private final String code;

    Extent(String code) {
        this.code = code;
    }

    @Override
    public String code() {
        return code;
    }
}
