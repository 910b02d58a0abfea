package drylap.ui.shell;

import drylap.kernel.PersonId;
import drylap.security.People;
import drylap.security.SessionPrincipal;
import jakarta.servlet.http.HttpServletRequest;
import org.springframework.context.event.EventListener;
import org.springframework.security.authentication.event.AuthenticationSuccessEvent;
import org.springframework.stereotype.Component;
import org.springframework.web.context.request.RequestContextHolder;
import org.springframework.web.context.request.ServletRequestAttributes;

/** Whoever comes in by the sign-in page goes on in its language: for good, where they chose it there, else until they choose. */
@Component
class CameIn {
    private final People people;

    CameIn(People people) {
        this.people = people;
    }

    @EventListener
    void on(AuthenticationSuccessEvent event) {
        if (event.getAuthentication().getPrincipal() instanceof SessionPrincipal who
                && RequestContextHolder.getRequestAttributes() instanceof ServletRequestAttributes now
                && isTheDoor(now.getRequest())) {
            var request = now.getRequest();
            people.cameIn(
                    new PersonId(who.personId()),
                    DoorLanguage.of(request),
                    DoorLanguage.chosen(request).isPresent());
        }
    }

    private static boolean isTheDoor(HttpServletRequest request) {
        return request.getRequestURI().equals(request.getContextPath() + "/" + SignInView.ROUTE);
    }
}
