package drylap.pace;

/** Why the log of a complete install tells nothing about how long it took. */
public enum Doubt {
    BEGUN_BEFORE("begun before the log"),
    UNDONE("something was undone"),
    CREWS("ticked by more than one crew, or by nobody's"),
    NIGHT("went over more than one day"),
    AT_ONCE("ticked all at once"),
    START("nothing tells when it began"),
    PAUSE("a long pause in it"),
    FAR_OFF("less than a quarter or more than four times the plan");

    private final String words;

    Doubt(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }
}
