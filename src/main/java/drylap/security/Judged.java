package drylap.security;

import drylap.speech.Saying;
import java.util.Optional;

/**
 * A password as it was judged.
 *
 * @param against why it is not taken, and what would be; nothing where it is
 */
public record Judged(Strength strength, Optional<Saying> against) {
    static Judged refused(Strength strength, Saying why) {
        return new Judged(strength, Optional.of(why));
    }
}
