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

    /** How it stands with the session of whoever asks. */
    public enum Session {
        NONE,
        GOES_ON,
        /** Whoever asks is nobody from here on. */
        HAS_ENDED,
        /** Whoever asks has to choose a password before anything else. */
        CHOOSES_PASSWORD
    }

    /** Ends one that is over. */
    public Session look(HttpServletRequest request, HttpServletResponse response) {
        var authentication = contexts.getContext().getAuthentication();
        if (authentication == null || !(authentication.getPrincipal() instanceof SessionPrincipal)) return Session.NONE;
        var who = signedIn.find();
        if (who.isPresent()) return who.get().choosesPassword() ? Session.CHOOSES_PASSWORD : Session.GOES_ON;
        end.logout(request, response, authentication);
        return Session.HAS_ENDED;
    }
}
