package drylap.security;

import drylap.kernel.PersonId;
import drylap.kernel.Reach;
import java.security.Principal;
import java.util.Set;

/**
 * Another program that acts for a person, as its token says; what the person may is asked for anew with every request.
 *
 * @param token the number of the token, by which its requests are counted
 */
public record ProgramPrincipal(long token, PersonId person, Set<Operation> operations, Reach reach)
        implements Principal {
    public ProgramPrincipal {
        operations = Set.copyOf(operations);
    }

    @Override
    public String getName() {
        return "token " + token;
    }
}
