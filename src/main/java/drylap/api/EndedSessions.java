package drylap.api;

import drylap.security.SessionPrincipal;
import drylap.security.SignedIn;
import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import org.springframework.security.core.context.SecurityContextHolderStrategy;
import org.springframework.security.web.authentication.logout.SecurityContextLogoutHandler;
import org.springframework.web.filter.OncePerRequestFilter;

/** Answers whoever was signed out meanwhile as whoever is not signed in, and ends their session. */
public final class EndedSessions extends OncePerRequestFilter {
    private final SignedIn signedIn;
    private final SecurityContextHolderStrategy contexts;
    private final SecurityContextLogoutHandler end = new SecurityContextLogoutHandler();

    public EndedSessions(SignedIn signedIn, SecurityContextHolderStrategy contexts) {
        this.signedIn = signedIn;
        this.contexts = contexts;
        end.setSecurityContextHolderStrategy(contexts);
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        var authentication = contexts.getContext().getAuthentication();
        boolean session = authentication != null && authentication.getPrincipal() instanceof SessionPrincipal;
        if (session && signedIn.find().isEmpty()) end.logout(request, response, authentication);
        chain.doFilter(request, response);
    }
}
