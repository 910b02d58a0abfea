package drylap.security;

/** Who asks, on the thread of a request. */
public interface SignedIn {
    /** @throws IllegalStateException where nobody is signed in */
    Person person();
}
