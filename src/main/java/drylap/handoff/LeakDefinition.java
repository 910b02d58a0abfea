package drylap.handoff;

import drylap.kernel.Coded;

/**
 * What counts as a leak in a water test. Documents differ, so the one used is kept with the result; the first three follow
 * the wording of articles on AAMA 502, 503 and 501.2, the last is deduced for openings without a pan.
 */
public enum LeakDefinition implements Coded {
    PAST_INNERMOST_PLANE("past-innermost-plane", "water past the innermost plane of the window, and clearly from it"),
    HALF_OUNCE_INSIDE(
            "half-ounce-inside",
            "water past the innermost plane, or 14 g (0.5 oz) on a level surface inside within 15 min"),
    ANY_INSIDE("any-inside", "any uncontrolled water on a surface inside"),
    ANY_INBOARD("any-inboard", "any water inboard of the barrier (opening without a pan)");

    private final String code;
    private final String words;

    LeakDefinition(String code, String words) {
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
