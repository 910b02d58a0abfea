package drylap.ui.shell;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.BeforeEnterObserver;
import com.vaadin.flow.router.Route;
import com.vaadin.flow.server.menu.MenuEntry;
import drylap.planning.Publications;
import drylap.security.SignedIn;

/** Leads everybody to the first screen that is theirs, and before any plan is published, to what is missing for one. */
@Route("")
@Needs({})
class LandingView extends Div implements BeforeEnterObserver {
    /** The screen of whoever has nothing to look at yet; it stands behind the others in the menu. */
    static final String START = "start";

    private final transient SignedIn signedIn;
    private final transient Publications publications;

    LandingView(SignedIn signedIn, Publications publications) {
        this.signedIn = signedIn;
        this.publications = publications;
    }

    @Override
    public void beforeEnter(BeforeEnterEvent event) {
        var who = signedIn.person();
        boolean begins = publications.inWork().isEmpty();
        Ways.of(who)
                .filter(entry -> begins && START.equals(route(entry)))
                .findFirst()
                .or(() -> Ways.of(who).findFirst())
                .ifPresent(entry -> event.forwardTo(entry.menuClass()));
    }

    private static String route(MenuEntry entry) {
        return entry.menuClass().getAnnotation(Route.class).value();
    }
}
