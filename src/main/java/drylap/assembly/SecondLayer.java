package drylap.assembly;

import drylap.kernel.Coded;

/** What the follow-on trade will do below the sill with a second barrier layer. */
public enum SecondLayer implements Coded {
    NONE("none"),
    TUCK("tuck"),
    DRAIN_BETWEEN("drain-between");

    private final String code;

    SecondLayer(String code) {
        this.code = code;
    }

    @Override
    public String code() {
        return code;
    }
}
