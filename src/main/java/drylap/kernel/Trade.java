package drylap.kernel;

/** Who does a task; a crew has one trade. */
public enum Trade implements Coded {
    WINDOW("window"),
    TESTER("tester"),
    WRAP("wrap"),
    SIDING("siding");

    private final String code;

    Trade(String code) {
        this.code = code;
    }

    @Override
    public String code() {
        return code;
    }
}
