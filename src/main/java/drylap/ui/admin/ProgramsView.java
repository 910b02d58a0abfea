package drylap.ui.admin;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.router.Route;
import drylap.hooks.Deliveries;
import drylap.hooks.Hooks;
import drylap.speech.Speech;
import drylap.tokens.ApiTokens;
import drylap.ui.shell.Needs;
import drylap.ui.shell.Spoken;

/** What lets other programs in, and what they are told: one's own, and everybody's for whoever manages people. */
@Route(ProgramsView.ROUTE)
@Needs({})
class ProgramsView extends Div implements Spoken {
    static final String ROUTE = "programs";

    private final transient Speech say;

    ProgramsView(ProgramsDesk desk, ApiTokens tokens, Hooks hooks, Deliveries deliveries) {
        say = desk.say();
        addClassName("programs-view");
        add(new TokensPanel(desk, tokens), new HooksPanel(desk, hooks, deliveries));
    }

    @Override
    public String called() {
        return say.it("Other programs");
    }
}
