package drylap.weather;

/** What keeps a wall shut for a task, in the words of the trade. */
public enum ShutCause {
    RAIN("rain"),
    SKIN("sealant must skin before rain"),
    DRYING("drying after rain"),
    COLD("too cold"),
    GUST("gusts"),
    DARK("dark");

    private final String words;

    ShutCause(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }
}
