package drylap.ui.planner;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H3;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.UnorderedList;
import drylap.speech.Speech;
import drylap.ui.drawn.WhySheet;

/** The rules that hold a visit to its minute, and what moves of it would cost. */
final class WhyPanel extends Div {
    WhyPanel(Speech say, WhySheet sheet) {
        addClassNames("verdict", "why");
        add(
                new H3(say.it("What its start waits for")),
                rules(say, sheet),
                new H3(say.it("What a move would cost")),
                moves(sheet));
    }

    private static UnorderedList rules(Speech say, WhySheet sheet) {
        var list = new UnorderedList();
        list.getElement().setAttribute("tabindex", "0"); // it may scroll
        sheet.rules()
                .forEach(rule -> list.add(new ListItem(
                        Panels.text(
                                rule.binds() ? say.it("Binds, {0}", rule.when()) : rule.when(),
                                rule.binds() ? "strong" : "plain"),
                        Panels.text(rule.words()))));
        return list;
    }

    private static UnorderedList moves(WhySheet sheet) {
        var list = new UnorderedList();
        list.getElement().setAttribute("tabindex", "0"); // it may scroll
        sheet.moves()
                .forEach(move -> list.add(new ListItem(
                        Panels.text(move.move(), "strong"), Panels.text(move.to()), Panels.text(move.cost()))));
        return list;
    }
}
