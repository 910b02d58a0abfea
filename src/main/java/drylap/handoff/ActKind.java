package drylap.handoff;

import drylap.kernel.Coded;

/** What was done about handing over. */
public enum ActKind implements Coded {
    HOLD_PASSED("hold-passed", "hold point passed"),
    HOLD_FAILED("hold-failed", "hold point not passed"),
    RELEASED("released", "released"),
    ACCEPTED("accepted", "accepted"),
    RETURNED("returned", "returned"),
    TEST_PASSED("test-passed", "water test passed"),
    TEST_FAILED("test-failed", "water test failed");

    private final String code;
    private final String words;

    ActKind(String code, String words) {
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
}
