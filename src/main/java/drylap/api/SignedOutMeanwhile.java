package drylap.api;

import drylap.security.EndedSessions;
import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import org.springframework.http.HttpStatus;
import org.springframework.web.filter.OncePerRequestFilter;

/**
 * Answers whoever was signed out meanwhile as whoever is not signed in, and so whoever has yet to choose a password: what waits on their phone is
 * kept until they have.
 */
public final class SignedOutMeanwhile extends OncePerRequestFilter {
    private final EndedSessions sessions;

    public SignedOutMeanwhile(EndedSessions sessions) {
        this.sessions = sessions;
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        if (sessions.look(request, response) == EndedSessions.Session.CHOOSES_PASSWORD) {
            ProblemAnswer.write(
                    response,
                    HttpStatus.UNAUTHORIZED,
                    "sign in and choose a password of your own first: somebody else set it");
            return;
        }
        chain.doFilter(request, response);
    }
}
