package drylap.ui.shell;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.router.RouterLink;
import com.vaadin.flow.spring.security.AuthenticationContext;
import drylap.security.Person;

/** Who is signed in, and the way out. */
final class SignedInAs extends Div {
    SignedInAs(Person who, AuthenticationContext door) {
        addClassName("signed-in");
        var account = new RouterLink("", AccountView.class);
        // words for those who hear the page, not a label: it would have to repeat what is to be seen
        var mine = new Span("My account: ");
        mine.addClassName("unseen");
        account.add(mine, new Span(who.name()), role(who));
        var out = new Button("Sign out", _ -> door.logout());
        out.addClassName("quiet");
        add(account, out);
    }

    private static Span role(Person who) {
        var role = new Span(who.role().words());
        role.addClassName("role");
        return role;
    }
}
