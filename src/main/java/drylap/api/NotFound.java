package drylap.api;

/** There is nothing for this person; whether there is for another is not told. */
public final class NotFound extends RuntimeException {
    public NotFound() {
        super("there is nothing here for you");
    }
}
