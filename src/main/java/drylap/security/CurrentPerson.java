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
        return authentication != null && authentication.getPrincipal() instanceof SessionPrincipal principal
                ? signIns.current(principal.id(), principal.signedInAt())
                : Optional.empty();
    }
}
