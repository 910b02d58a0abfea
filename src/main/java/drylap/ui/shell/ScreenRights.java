package drylap.ui.shell;

import com.vaadin.flow.server.auth.AccessCheckResult;
import com.vaadin.flow.server.auth.AnonymousAllowed;
import com.vaadin.flow.server.auth.NavigationAccessChecker;
import com.vaadin.flow.server.auth.NavigationContext;
import drylap.security.Person;
import drylap.security.SignedIn;
import java.util.Arrays;
import org.springframework.stereotype.Component;

/** Keeps people out of screens that are not theirs; what lies below the screens asks again. */
@Component
class ScreenRights implements NavigationAccessChecker {
    private final transient SignedIn signedIn;

    ScreenRights(SignedIn signedIn) {
        this.signedIn = signedIn;
    }

    @Override
    public AccessCheckResult check(NavigationContext way) {
        Class<?> screen = way.getNavigationTarget();
        if (way.isErrorHandling() || screen.isAnnotationPresent(AnonymousAllowed.class)) return way.allow();
        return signedIn.find().filter(who -> mayOpen(who, screen)).isPresent()
                ? way.allow()
                : way.deny("not theirs to open");
    }

    static boolean mayOpen(Person who, Class<?> screen) {
        if (who.choosesPassword()) return screen == AccountView.class;
        Needs needs = screen.getAnnotation(Needs.class);
        return needs != null && Arrays.stream(needs.value()).allMatch(who::may);
    }
}
