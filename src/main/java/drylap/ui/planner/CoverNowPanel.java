package drylap.ui.planner;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.NativeTable;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import drylap.kernel.OpeningId;
import drylap.ui.components.SpreadsheetLink;
import drylap.ui.drawn.CoverNowList;
import drylap.ui.shell.Icons;

/** Which openings stand open before the next rain; nothing at all where none does. */
final class CoverNowPanel extends Div {
    void show(String where, CoverNowList list) {
        removeAll();
        setVisible(!list.rows().isEmpty());
        if (list.rows().isEmpty()) return;
        Section panel = Panels.panel("cover-now", "Cover now");
        panel.addComponentAsFirst(Icons.DROP.svg());
        panel.add(new Paragraph(
                "These openings stand open, and no crew closes them before it rains. Close or cover them first."));
        NativeTable table = table(list);
        panel.add(table, new SpreadsheetLink(where, "Cover now", table));
        add(panel);
    }

    private static NativeTable table(CoverNowList list) {
        NativeTable table = Panels.table("Opening", "Where", "Next rain", "To close it", "Open since");
        for (CoverNowList.Row row : list.rows())
            Panels.row(
                    table,
                    WallsView.link(new OpeningId(row.opening())),
                    Panels.text(row.place()),
                    Panels.time(row.nextRain(), row.rainAt(), "strong"),
                    Panels.number(row.minutesToClose() + " min", row.minutesToClose(), "min", "strong"),
                    Panels.time(row.openSince(), row.openAt()));
        return table;
    }
}
