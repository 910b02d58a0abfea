package drylap.ui.followon;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.UnorderedList;
import com.vaadin.flow.router.QueryParameters;
import com.vaadin.flow.router.RouterLink;
import drylap.speech.Speech;
import drylap.ui.components.OpeningGlyph;
import drylap.ui.drawn.ApronSheet;
import drylap.ui.planner.Panels;

/** The opening that was pointed at. */
final class ApronPanel extends Div {
    ApronPanel(Speech say, ApronSheet sheet, Deeds deeds) {
        var panel = Panels.panel("apron-panel", say.it("Apron of {0}", sheet.opening()));
        var words = new Div(
                Panels.text(sheet.hand(), "strong"),
                new UnorderedList(sheet.facts().stream().map(ListItem::new).toArray(ListItem[]::new)));
        var standing = new Div(new OpeningGlyph(sheet.glyph()), words);
        standing.addClassName("standing");
        panel.add(new Paragraph(sheet.place()), standing, buttons(say, sheet, deeds), records(say, sheet));
        add(panel);
    }

    private static Div buttons(Speech say, ApronSheet sheet, Deeds deeds) {
        var buttons = new Div();
        buttons.addClassName("deeds");
        if (sheet.acceptable()) {
            var accept = new Button(say.it("Accept this one"), _ -> deeds.accept(sheet.seen()));
            accept.setAriaLabel(say.it("Accept {0}", sheet.opening()));
            accept.setDisableOnClick(true);
            buttons.add(accept);
        }
        if (sheet.returnable()) {
            var back = new Button(say.it("Return it…"), _ -> deeds.giveBack(sheet));
            back.setAriaLabel(say.it("Return {0}", sheet.opening()));
            buttons.add(back);
        }
        sheet.toMark()
                .forEach(line -> buttons.add(
                        CoursePanel.mark(say, line, words -> say.it("{0} at {1}", words, sheet.opening()), deeds)));
        return buttons;
    }

    private static RouterLink records(Speech say, ApronSheet sheet) {
        var link = new RouterLink(say.it("Hand-over records of {0}", sheet.opening()), RecordsView.class);
        link.setQueryParameters(
                QueryParameters.of(RecordsView.OPENING, sheet.opening().value()));
        return link;
    }
}
