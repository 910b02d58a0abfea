package drylap.ui.planner;

import com.vaadin.flow.component.details.Details;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.NativeTable;
import com.vaadin.flow.component.html.Paragraph;
import drylap.speech.Speech;
import drylap.ui.components.SpreadsheetLink;
import drylap.ui.drawn.ExposureSheet;
import drylap.ui.drawn.ExposureSheet.Line;

/** Which walls of a site the coming rain is driven on to, as a range between models. */
final class ExposurePanel extends Div {
    private final transient Speech say;

    ExposurePanel(Speech say, String site, ExposureSheet sheet) {
        this.say = say;
        addClassName("site-exposure");
        add(new Paragraph(sheet.odds()));
        var details = new Details(say.it("Driving rain on the walls of {0}", site));
        details.setOpened(true);
        if (sheet.walls().isEmpty())
            details.add(new Paragraph(say.it("No rain is forecast to reach any wall from now on.")));
        else {
            NativeTable table = table(site, sheet);
            details.add(table, new SpreadsheetLink(say, site, say.it("Driving rain on walls"), table));
        }
        details.add(new Paragraph(say.it(ExposureSheet.CAUTION)), new Paragraph(sheet.assumed()));
        add(details);
    }

    private NativeTable table(String site, ExposureSheet sheet) {
        NativeTable table = Panels.table(
                say.it("Wall"),
                say.it("If it rains as told: least to most of three models"),
                say.it("Place"),
                say.it("Wettest hour"));
        table.getElement().setAttribute("aria-label", say.it("Driving rain on the walls of {0}", site));
        for (Line line : sheet.walls())
            Panels.row(
                    table,
                    Panels.text(line.wall()),
                    Panels.text(line.litres()),
                    Panels.text(line.place()),
                    Panels.text(line.wettest()));
        return table;
    }
}
