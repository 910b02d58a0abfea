package drylap.security;

import java.util.Optional;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.security.core.context.SecurityContextHolderStrategy;
import org.springframework.stereotype.Component;

/** Who asks, read anew for every question, so that a right that was taken away is gone with the next click. */
@Component
final class CurrentPerson implements SignedIn {
    private final SignIns signIns;
    private final SecurityContextHolderStrategy contexts;

    /** The strategy of this application's own filter chains: the static one may be that of another application in the process. */
    CurrentPerson(SignIns signIns, ObjectProvider<SecurityContextHolderStrategy> contexts) {
        this.signIns = signIns;
        this.contexts = contexts.getIfAvailable(SecurityContextHolder::getContextHolderStrategy);
    }

    @Override
    public Optional<Person> find() {
        var authentication = contexts.getContext().getAuthentication();
        return switch (authentication == null ? null : authentication.getPrincipal()) {
            case SessionPrincipal session -> signIns.current(session.id(), session.signedInAt());
            case ProgramPrincipal program ->
                signIns.active(program.person()).map(who -> who.actedFor(program.operations(), program.reach()));
            case null, default -> Optional.empty();
        };
    }
}
