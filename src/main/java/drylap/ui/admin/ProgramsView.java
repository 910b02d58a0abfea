package drylap.ui.admin;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import drylap.hooks.Deliveries;
import drylap.hooks.Hooks;
import drylap.tokens.ApiTokens;
import drylap.ui.shell.Needs;

/** What lets other programs in, and what they are told: one's own, and everybody's for whoever manages people. */
@Route(ProgramsView.ROUTE)
@PageTitle("Other programs · Drylap")
@Needs({})
class ProgramsView extends Div {
    static final String ROUTE = "programs";

    ProgramsView(ProgramsDesk desk, ApiTokens tokens, Hooks hooks, Deliveries deliveries) {
        addClassName("programs-view");
        add(new TokensPanel(desk, tokens), new HooksPanel(desk, hooks, deliveries));
    }
}
