package drylap.kernel;

/** What a crew does at one opening, in the order in which an opening needs them. */
public enum Task implements Coded {
    INSTALL("install", Trade.WINDOW),
    TEST("test", Trade.TESTER),
    WRAP("wrap", Trade.WRAP),
    CLAD("clad", Trade.SIDING);

    private final String code;
    private final Trade trade;

    Task(String code, Trade trade) {
        this.code = code;
        this.trade = trade;
    }

    @Override
    public String code() {
        return code;
    }

    public Trade trade() {
        return trade;
    }

    public static Task of(Trade trade) {
        return switch (trade) {
            case WINDOW -> INSTALL;
            case TESTER -> TEST;
            case WRAP -> WRAP;
            case SIDING -> CLAD;
        };
    }
}
