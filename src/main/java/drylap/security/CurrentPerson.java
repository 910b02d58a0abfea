package drylap.security;

import java.util.Optional;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.stereotype.Component;

/** Who asks, read anew for every question, so that a right that was taken away is gone with the next click. */
@Component
final class CurrentPerson implements SignedIn {
    private final SignIns signIns;

    CurrentPerson(SignIns signIns) {
        this.signIns = signIns;
    }

    @Override
    public Optional<Person> find() {
        var authentication = SecurityContextHolder.getContext().getAuthentication();
        return authentication != null && authentication.getPrincipal() instanceof SessionPrincipal principal
                ? signIns.current(principal.id(), principal.signedInAt())
                : Optional.empty();
    }
}
