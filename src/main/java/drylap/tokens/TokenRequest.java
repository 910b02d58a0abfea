package drylap.tokens;

import drylap.kernel.PersonId;
import drylap.kernel.Reach;
import drylap.speech.Saying;
import java.time.Duration;
import java.time.Instant;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;

/**
 * A token that someone asks for.
 *
 * @param person for whom the program is to act
 * @param reach the sites that it is narrowed to
 */
public record TokenRequest(PersonId person, String name, Set<Scope> scopes, Reach reach, Instant expiresAt) {
    /** A token is forgotten more easily than it is made. */
    public static final Duration LONGEST = Duration.ofDays(366);

    private static final int LONGEST_NAME = 80;

    public TokenRequest {
        name = name.strip();
        scopes = Set.copyOf(scopes);
    }

    /** What speaks against it, in words. */
    Optional<Saying> problem(Instant now) {
        if (name.isEmpty() || name.length() > LONGEST_NAME)
            return Optional.of(
                    Saying.of("the name has {0} characters; accepted: 1 to {1}", name.length(), LONGEST_NAME));
        if (!scopes.contains(Scope.READ))
            return Optional.of(
                    Saying.of("without the right to read it can do nothing; accepted: read, with others or alone"));
        if (!expiresAt.isAfter(now) || expiresAt.isAfter(now.plus(LONGEST)))
            return Optional.of(Saying.of(
                    "it would end at {0}; accepted: from now on, within {1} days", expiresAt, LONGEST.toDays()));
        if (!reach.everySite() && reach.sites().isEmpty())
            return Optional.of(
                    Saying.of("it would be of no site; accepted: one or more, or every one of the person's"));
        return Optional.empty();
    }

    Set<Scope> scopesInOrder() {
        return EnumSet.copyOf(scopes);
    }
}
