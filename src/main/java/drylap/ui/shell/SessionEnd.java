package drylap.ui.shell;

import drylap.security.EndedSessions;
import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import org.springframework.boot.web.servlet.FilterRegistrationBean;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.stereotype.Component;
import org.springframework.web.filter.OncePerRequestFilter;

/** Shows the sign-in page to whoever was signed out meanwhile, and their account to whoever has yet to choose a password. */
@Component
class SessionEnd extends OncePerRequestFilter {
    private final EndedSessions sessions;

    SessionEnd(EndedSessions sessions) {
        this.sessions = sessions;
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        String elsewhere = switch (sessions.look(request, response)) {
            case HAS_ENDED -> SignInView.ROUTE;
            case CHOOSES_PASSWORD -> isOutsideTheFrame(request) ? AccountView.ROUTE : "";
            case NONE, GOES_ON -> "";
        };
        if (!elsewhere.isEmpty() && asksForAPage(request))
            response.sendRedirect(request.getContextPath() + "/" + elsewhere);
        else chain.doFilter(request, response);
    }

    /** Vaadin's own pages lead there by themselves ({@link PasswordFirst}). */
    private static boolean isOutsideTheFrame(HttpServletRequest request) {
        String path = request.getRequestURI().substring(request.getContextPath().length());
        return path.startsWith("/crew/") || path.startsWith("/papers/");
    }

    private static boolean asksForAPage(HttpServletRequest request) {
        String wanted = request.getHeader("Accept");
        return request.getMethod().equals("GET") && wanted != null && wanted.contains("text/html");
    }

    /** Its place is in the security chain only. */
    @Configuration(proxyBeanMethods = false)
    static class NotOnItsOwn {
        @Bean
        FilterRegistrationBean<SessionEnd> sessionEndRegistration(SessionEnd filter) {
            var registration = new FilterRegistrationBean<>(filter);
            registration.setEnabled(false);
            return registration;
        }
    }
}
