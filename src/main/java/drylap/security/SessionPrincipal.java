package drylap.security;

import drylap.kernel.PersonId;
import java.io.Serializable;
import java.security.Principal;
import java.time.Instant;

/** What a session knows of its person; all else is asked for anew with every request. */
public record SessionPrincipal(long personId, String signInName, Instant signedInAt)
        implements Principal, Serializable {
    @Override
    public String getName() {
        return signInName;
    }

    PersonId id() {
        return new PersonId(personId);
    }
}
