package drylap.ui.shell;

import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.BeforeEnterListener;
import com.vaadin.flow.router.ListenerPriority;
import com.vaadin.flow.server.ServiceInitEvent;
import com.vaadin.flow.server.VaadinServiceInitListener;
import com.vaadin.flow.server.auth.AnonymousAllowed;
import drylap.security.SignedIn;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.stereotype.Component;

/** Logs who went to a screen that is not theirs, by number. {@link ScreenRights} is asked about every way of a menu as well. */
@Component
class RefusedScreens implements VaadinServiceInitListener {
    private static final Logger LOG = LoggerFactory.getLogger(RefusedScreens.class);
    private final transient SignedIn signedIn;

    RefusedScreens(SignedIn signedIn) {
        this.signedIn = signedIn;
    }

    @Override
    public void serviceInit(ServiceInitEvent event) {
        event.getSource().addUIInitListener(begun -> begun.getUI().addBeforeEnterListener(new AtTheDoor()));
    }

    /** Before those who turn people away, after whom nobody is asked. */
    @ListenerPriority(PasswordFirst.PRIORITY - 1)
    private final class AtTheDoor implements BeforeEnterListener {
        @Override
        public void beforeEnter(BeforeEnterEvent event) {
            Class<?> screen = event.getNavigationTarget();
            if (event.isErrorEvent() || screen.isAnnotationPresent(AnonymousAllowed.class)) return;
            signedIn.find()
                    .filter(who -> !ScreenRights.mayOpen(who, screen))
                    .ifPresent(who -> LOG.warn(
                            "Refused: person {} ({}) may not open {}",
                            who.id().value(),
                            who.role().words(),
                            screen.getSimpleName()));
        }
    }
}
