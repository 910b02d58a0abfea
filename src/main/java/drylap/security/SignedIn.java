package drylap.security;

import java.util.Optional;

/** Who asks, on the thread of a request. */
@FunctionalInterface
public interface SignedIn {
    /** Empty where nobody is signed in, or whoever was has been signed out since. */
    Optional<Person> find();

    /** @throws IllegalStateException where nobody is signed in */
    default Person person() {
        return find().orElseThrow(() -> new IllegalStateException("nobody is signed in"));
    }
}
