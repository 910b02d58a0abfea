package drylap.ui.shell;

import com.vaadin.flow.component.html.Nav;
import com.vaadin.flow.router.RouterLink;
import com.vaadin.flow.server.menu.MenuConfiguration;
import com.vaadin.flow.server.menu.MenuEntry;
import drylap.security.Person;
import drylap.speech.Speech;
import java.util.stream.Stream;

/** The ways between someone's screens, in the order that the screens give themselves. */
final class Ways extends Nav {
    Ways(Person who, Speech say) {
        getElement().setAttribute("aria-label", say.it("Screens"));
        of(who).forEach(entry -> way(entry, say));
    }

    static Stream<MenuEntry> of(Person who) {
        return MenuConfiguration.getMenuEntries().stream()
                .filter(entry -> entry.menuClass() != null && ScreenRights.mayOpen(who, entry.menuClass()));
    }

    private void way(MenuEntry entry, Speech say) {
        add(new RouterLink(say.it(entry.title()), entry.menuClass()));
    }
}
