package drylap.api;

import drylap.security.EndedSessions;
import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import org.springframework.web.filter.OncePerRequestFilter;

/** Answers whoever was signed out meanwhile as whoever is not signed in. */
public final class SignedOutMeanwhile extends OncePerRequestFilter {
    private final EndedSessions sessions;

    public SignedOutMeanwhile(EndedSessions sessions) {
        this.sessions = sessions;
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        sessions.end(request, response);
        chain.doFilter(request, response);
    }
}
