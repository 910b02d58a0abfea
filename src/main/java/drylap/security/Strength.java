package drylap.security;

/** How hard a password is to guess, for whoever chooses one. */
public enum Strength {
    TOO_SHORT("Too short", 1),
    TOO_LONG("Too long", 1),
    EASY("Too easy to guess", 1),
    NEARLY("Nearly hard enough to guess", 2),
    HARD("Hard to guess", 3),
    VERY_HARD("Very hard to guess", 4);

    /** So many parts a bar has that shows it. */
    public static final int PARTS = 4;

    private final String words;
    private final int parts;

    Strength(String words, int parts) {
        this.words = words;
        this.parts = parts;
    }

    public String words() {
        return words;
    }

    /** How many parts of a bar are filled, 1 to {@link #PARTS}. */
    public int parts() {
        return parts;
    }
}
