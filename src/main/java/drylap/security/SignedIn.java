package drylap.security;

import java.util.Optional;

/** Who asks, on the thread of a request. */
public interface SignedIn {
    /** @throws IllegalStateException where nobody is signed in */
    Person person();

    /** Empty where nobody is signed in, or whoever was has been signed out since. */
    Optional<Person> find();
}
