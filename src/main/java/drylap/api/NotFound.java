package drylap.api;

/** There is nothing for this person; whether there is for another is not told. */
final class NotFound extends RuntimeException {
    NotFound() {
        super("there is nothing here for you");
    }
}
