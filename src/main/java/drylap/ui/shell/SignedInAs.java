package drylap.ui.shell;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.router.RouterLink;
import com.vaadin.flow.spring.security.AuthenticationContext;
import drylap.security.Person;
import drylap.speech.Speech;

/** Who is signed in, and the way out. */
final class SignedInAs extends Div {
    SignedInAs(Person who, Speech say, AuthenticationContext door) {
        addClassName("signed-in");
        var account = new RouterLink("", AccountView.class);
        // words for those who hear the page, not a label: it would have to repeat what is to be seen
        var mine = new Span(say.it("My account") + ": ");
        mine.addClassName("unseen");
        account.add(mine, new Span(who.name()), role(who, say));
        var out = new Button(say.it("Sign out"), _ -> door.logout());
        out.addClassName("quiet");
        add(account, out);
    }

    private static Span role(Person who, Speech say) {
        var role = new Span(say.it(who.role().words()));
        role.addClassName("role");
        return role;
    }
}
