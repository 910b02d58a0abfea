package drylap.ui.shell;

import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.BeforeEnterListener;
import com.vaadin.flow.router.ListenerPriority;
import com.vaadin.flow.server.ServiceInitEvent;
import com.vaadin.flow.server.VaadinServiceInitListener;
import com.vaadin.flow.server.auth.AnonymousAllowed;
import drylap.security.Person;
import drylap.security.SignedIn;
import org.springframework.stereotype.Component;

/** Leads whoever came in by a password that somebody else set to where they choose one of their own, wherever they go. */
@Component
class PasswordFirst implements VaadinServiceInitListener {
    /** Before those who turn people away, after whom nobody is asked. */
    static final int PRIORITY = Integer.MAX_VALUE;

    private final transient SignedIn signedIn;

    PasswordFirst(SignedIn signedIn) {
        this.signedIn = signedIn;
    }

    @Override
    public void serviceInit(ServiceInitEvent event) {
        event.getSource().addUIInitListener(begun -> begun.getUI().addBeforeEnterListener(new AtTheDoor()));
    }

    @ListenerPriority(PRIORITY)
    private final class AtTheDoor implements BeforeEnterListener {
        @Override
        public void beforeEnter(BeforeEnterEvent event) {
            Class<?> screen = event.getNavigationTarget();
            if (screen == AccountView.class || screen.isAnnotationPresent(AnonymousAllowed.class)) return;
            if (signedIn.find().filter(Person::choosesPassword).isPresent()) event.forwardTo(AccountView.class);
        }
    }
}
