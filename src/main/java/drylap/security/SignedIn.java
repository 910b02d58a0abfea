package drylap.security;

import drylap.kernel.Reading;
import java.util.Optional;

/** Who asks, on the thread of a request. */
@FunctionalInterface
public interface SignedIn {
    /** Empty where nobody is signed in, or whoever was has been signed out since. */
    Optional<Person> find();

    /** How whoever asks reads. */
    default Reading reading() {
        return find().map(Person::reading).orElse(Reading.USUAL);
    }

    /** @throws NobodySignedIn where nobody is */
    default Person person() {
        return find().orElseThrow(NobodySignedIn::new);
    }
}
