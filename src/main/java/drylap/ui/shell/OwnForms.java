package drylap.ui.shell;

import com.vaadin.flow.spring.security.RequestUtil;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import org.springframework.security.access.AccessDeniedException;
import org.springframework.security.config.ObjectPostProcessor;
import org.springframework.security.config.annotation.web.builders.HttpSecurity;
import org.springframework.security.config.annotation.web.configurers.CsrfConfigurer;
import org.springframework.security.web.access.AccessDeniedHandler;
import org.springframework.security.web.access.AccessDeniedHandlerImpl;
import org.springframework.security.web.csrf.CsrfFilter;

/**
 * Takes forms from our own pages only, the one at the door too: otherwise a page of somebody else's could sign people in under a name that is not
 * theirs, and they would work in it. What Vaadin's client sends carries a token of Vaadin's.
 */
final class OwnForms {
    private static final AccessDeniedHandler REFUSED = new AccessDeniedHandlerImpl();

    private OwnForms() {}

    static void only(CsrfConfigurer<HttpSecurity> forms, RequestUtil requests) {
        forms.ignoringRequestMatchers(requests::isFrameworkInternalRequest);
        forms.withObjectPostProcessor(WITH_A_FRESH_FORM);
    }

    /** Whose form lay there longer than its session gets the form again. */
    private static void refuse(HttpServletRequest request, HttpServletResponse response, AccessDeniedException why)
            throws IOException, jakarta.servlet.ServletException {
        String door = request.getContextPath() + "/" + SignInView.ROUTE;
        if (request.getRequestURI().equals(door)) response.sendRedirect(door);
        else REFUSED.handle(request, response, why);
    }

    private static final ObjectPostProcessor<CsrfFilter> WITH_A_FRESH_FORM = new ObjectPostProcessor<>() {
        @Override
        public <O extends CsrfFilter> O postProcess(O filter) {
            filter.setAccessDeniedHandler(OwnForms::refuse);
            return filter;
        }
    };
}
