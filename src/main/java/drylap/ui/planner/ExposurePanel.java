package drylap.ui.planner;

import com.vaadin.flow.component.details.Details;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.NativeTable;
import com.vaadin.flow.component.html.Paragraph;
import drylap.ui.components.SpreadsheetLink;
import drylap.ui.drawn.ExposureSheet;
import drylap.ui.drawn.ExposureSheet.Line;

/** Which walls of a site the coming rain is driven on to, as a range between models. */
final class ExposurePanel extends Div {
    ExposurePanel(String site, ExposureSheet sheet) {
        addClassName("site-exposure");
        add(new Paragraph(sheet.odds()));
        var details = new Details("Driving rain on the walls of " + site);
        details.setOpened(true);
        if (sheet.walls().isEmpty()) details.add(new Paragraph("No rain is forecast to reach any wall from now on."));
        else {
            NativeTable table = table(site, sheet);
            details.add(table, new SpreadsheetLink(site, "Driving rain on walls", table));
        }
        details.add(new Paragraph(ExposureSheet.CAUTION), new Paragraph(sheet.assumed()));
        add(details);
    }

    private static NativeTable table(String site, ExposureSheet sheet) {
        NativeTable table =
                Panels.table("Wall", "If it rains as told: least to most of three models", "Place", "Wettest hour");
        table.getElement().setAttribute("aria-label", "Driving rain on the walls of " + site);
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
