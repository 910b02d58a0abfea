package drylap.security;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.security.core.context.SecurityContextHolderStrategy;
import org.springframework.security.web.authentication.logout.SecurityContextLogoutHandler;
import org.springframework.stereotype.Service;

/** Ends the session of someone who was signed out everywhere or signed off, whichever node answers them next. */
@Service
public final class EndedSessions {
    private final SignedIn signedIn;
    private final SecurityContextHolderStrategy contexts;
    private final SecurityContextLogoutHandler end = new SecurityContextLogoutHandler();

    EndedSessions(SignedIn signedIn, ObjectProvider<SecurityContextHolderStrategy> contexts) {
        this.signedIn = signedIn;
        this.contexts = contexts.getIfAvailable(SecurityContextHolder::getContextHolderStrategy);
        end.setSecurityContextHolderStrategy(this.contexts);
    }

    /** Whether there was one, which is over now: whoever asks is nobody from here on. */
    public boolean end(HttpServletRequest request, HttpServletResponse response) {
        var authentication = contexts.getContext().getAuthentication();
        boolean session = authentication != null && authentication.getPrincipal() instanceof SessionPrincipal;
        if (!session || signedIn.find().isPresent()) return false;
        end.logout(request, response, authentication);
        return true;
    }
}
