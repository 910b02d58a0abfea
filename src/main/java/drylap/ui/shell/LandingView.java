package drylap.ui.shell;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.BeforeEnterObserver;
import com.vaadin.flow.router.Route;
import drylap.security.SignedIn;

/** Leads everybody to the first screen that is theirs. */
@Route("")
@Needs({})
class LandingView extends Div implements BeforeEnterObserver {
    private final transient SignedIn signedIn;

    LandingView(SignedIn signedIn) {
        this.signedIn = signedIn;
    }

    @Override
    public void beforeEnter(BeforeEnterEvent event) {
        Ways.of(signedIn.person()).findFirst().ifPresent(entry -> event.forwardTo(entry.menuClass()));
    }
}
