package drylap.handoff;

import drylap.kernel.Coded;

/** A point beyond which nobody goes on until someone has looked. Which of them a site works with is the site's choice. */
public enum HoldPoint implements Coded {
    ROUGH_OPENING("rough-opening", "rough opening accepted", true),
    MOCK_UP("mock-up", "first of its kind looked at as a mock-up", false),
    SPOT_TEST("spot-test", "spot water test passed", false);

    private final String code;
    private final String words;
    private final boolean usual;

    HoldPoint(String code, String words, boolean usual) {
        this.code = code;
        this.words = words;
        this.usual = usual;
    }

    @Override
    public String code() {
        return code;
    }

    public String words() {
        return words;
    }

    /** Applies where a site has chosen nothing; common practice, no source. */
    public boolean usual() {
        return usual;
    }
}
