package drylap.ui.shell;

import drylap.security.SessionPrincipal;
import drylap.security.SignedIn;
import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.boot.web.servlet.FilterRegistrationBean;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.security.core.context.SecurityContextHolderStrategy;
import org.springframework.security.web.authentication.logout.SecurityContextLogoutHandler;
import org.springframework.stereotype.Component;
import org.springframework.web.filter.OncePerRequestFilter;

/** Ends the session of someone who was signed out everywhere or signed off, whichever node answers them next. */
@Component
class SessionEnd extends OncePerRequestFilter {
    private final SignedIn signedIn;
    private final SecurityContextHolderStrategy contexts;
    private final SecurityContextLogoutHandler end = new SecurityContextLogoutHandler();

    SessionEnd(SignedIn signedIn, ObjectProvider<SecurityContextHolderStrategy> contexts) {
        this.signedIn = signedIn;
        this.contexts = contexts.getIfAvailable(SecurityContextHolder::getContextHolderStrategy);
        end.setSecurityContextHolderStrategy(this.contexts);
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        var authentication = contexts.getContext().getAuthentication();
        if (authentication != null
                && authentication.getPrincipal() instanceof SessionPrincipal
                && signedIn.find().isEmpty()) {
            end.logout(request, response, authentication);
            if (asksForAPage(request)) {
                response.sendRedirect(request.getContextPath() + "/" + SignInView.ROUTE);
                return;
            }
        }
        chain.doFilter(request, response);
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
