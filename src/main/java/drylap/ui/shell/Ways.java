package drylap.ui.shell;

import com.vaadin.flow.component.html.Nav;
import com.vaadin.flow.router.RouterLink;
import com.vaadin.flow.server.menu.MenuConfiguration;
import com.vaadin.flow.server.menu.MenuEntry;
import drylap.security.Person;
import java.util.stream.Stream;

/** The ways between someone's screens, in the order that the screens give themselves. */
final class Ways extends Nav {
    Ways(Person who) {
        getElement().setAttribute("aria-label", "Screens");
        of(who).forEach(this::way);
    }

    static Stream<MenuEntry> of(Person who) {
        return MenuConfiguration.getMenuEntries().stream()
                .filter(entry -> entry.menuClass() != null && ScreenRights.mayOpen(who, entry.menuClass()));
    }

    private void way(MenuEntry entry) {
        add(new RouterLink(entry.title(), entry.menuClass()));
    }
}
