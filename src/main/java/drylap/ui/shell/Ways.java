package drylap.ui.shell;

import com.vaadin.flow.component.html.Nav;
import com.vaadin.flow.router.RouterLink;
import com.vaadin.flow.server.menu.MenuConfiguration;
import com.vaadin.flow.server.menu.MenuEntry;

/** The ways between the screens, in the order that the screens give themselves. */
final class Ways extends Nav {
    Ways() {
        getElement().setAttribute("aria-label", "Screens");
        MenuConfiguration.getMenuEntries().stream()
                .filter(entry -> entry.menuClass() != null)
                .forEach(this::way);
    }

    private void way(MenuEntry entry) {
        add(new RouterLink(entry.title(), entry.menuClass()));
    }
}
