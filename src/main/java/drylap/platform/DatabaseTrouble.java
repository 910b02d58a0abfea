package drylap.platform;

/** Thrown where the database cannot be had; says what is wrong and what to do about it. */
public final class DatabaseTrouble extends RuntimeException {
    private final String remedy;

    DatabaseTrouble(String what, String remedy, Throwable cause) {
        super(what, cause);
        this.remedy = remedy;
    }

    public DatabaseTrouble(String what, String remedy) {
        super(what);
        this.remedy = remedy;
    }

    public String remedy() {
        return remedy;
    }
}
