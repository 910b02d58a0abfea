package drylap.kernel;

/** What someone measures with. */
public enum Ruler implements Coded {
    INCHES("in"),
    MILLIMETRES("mm");

    private final String code;

    Ruler(String code) {
        this.code = code;
    }

    @Override
    public String code() {
        return code;
    }
}
