package drylap.tokens;

import drylap.kernel.PersonId;
import drylap.kernel.Reach;
import java.time.Instant;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * A token as those see it who look after it; its secret is not known any more.
 *
 * @param person for whom the program acts, by number and name
 * @param reach the sites that it is narrowed to; everywhere: wherever the person may
 * @param usedAt to the minute; none: never
 */
public record ApiToken(
        long id,
        PersonId person,
        String personName,
        String name,
        Set<Scope> scopes,
        Reach reach,
        String madeBy,
        Instant madeAt,
        Instant expiresAt,
        @Nullable Instant usedAt,
        @Nullable Instant revokedAt,
        @Nullable String revokedBy) {
    public ApiToken {
        scopes = Set.copyOf(scopes);
    }

    public boolean inUse(Instant now) {
        return revokedAt == null && expiresAt.isAfter(now);
    }
}
