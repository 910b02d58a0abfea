package drylap.forecasts;

import drylap.kernel.Coded;

/** How a go at a source ended. */
public enum FetchOutcome implements Coded {
    FETCHED("fetched", "fetched"),
    UNCHANGED("unchanged", "nothing newer"),
    /** The source answered, but what it sent is no forecast. */
    REFUSED("refused", "refused"),
    UNANSWERED("unanswered", "no answer");

    private final String code;
    private final String words;

    FetchOutcome(String code, String words) {
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
