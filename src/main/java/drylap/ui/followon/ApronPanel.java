package drylap.ui.followon;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.UnorderedList;
import com.vaadin.flow.router.QueryParameters;
import com.vaadin.flow.router.RouterLink;
import drylap.ui.components.OpeningGlyph;
import drylap.ui.drawn.ApronSheet;
import drylap.ui.planner.Panels;

/** The opening that was pointed at. */
final class ApronPanel extends Div {
    ApronPanel(ApronSheet sheet, Deeds deeds) {
        var panel = Panels.panel("apron-panel", "Apron of " + sheet.opening());
        var words = new Div(
                Panels.text(sheet.hand(), "strong"),
                new UnorderedList(sheet.facts().stream().map(ListItem::new).toArray(ListItem[]::new)));
        var standing = new Div(new OpeningGlyph(sheet.glyph()), words);
        standing.addClassName("standing");
        panel.add(new Paragraph(sheet.place()), standing, buttons(sheet, deeds), records(sheet));
        add(panel);
    }

    private static Div buttons(ApronSheet sheet, Deeds deeds) {
        var buttons = new Div();
        buttons.addClassName("deeds");
        if (sheet.acceptable()) {
            var accept = new Button("Accept this one", _ -> deeds.accept(sheet.seen()));
            accept.setAriaLabel("Accept " + sheet.opening());
            accept.setDisableOnClick(true);
            buttons.add(accept);
        }
        if (sheet.returnable()) {
            var back = new Button("Return it…", _ -> deeds.giveBack(sheet));
            back.setAriaLabel("Return " + sheet.opening());
            buttons.add(back);
        }
        sheet.toMark().forEach(line -> buttons.add(CoursePanel.mark(line, " at " + sheet.opening(), deeds)));
        return buttons;
    }

    private static RouterLink records(ApronSheet sheet) {
        var link = new RouterLink("Hand-over records of " + sheet.opening(), RecordsView.class);
        link.setQueryParameters(
                QueryParameters.of(RecordsView.OPENING, sheet.opening().value()));
        return link;
    }
}
