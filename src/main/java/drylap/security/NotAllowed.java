package drylap.security;

/** Someone asked for what is not theirs; the message says so without telling whether it exists. */
public final class NotAllowed extends RuntimeException {
    public NotAllowed(Person who, Operation operation, String where) {
        super("%s (%s) may not %s %s".formatted(who.signInName(), who.role().words(), operation.words(), where));
    }
}
