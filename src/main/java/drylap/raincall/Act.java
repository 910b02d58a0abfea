package drylap.raincall;

/** What a crew does at an open opening when rain comes. */
public enum Act {
    CLOSE("close"),
    COVER("cover");

    private final String words;

    Act(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }
}
