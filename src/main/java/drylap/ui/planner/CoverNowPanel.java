package drylap.ui.planner;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.NativeTable;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import drylap.kernel.OpeningId;
import drylap.speech.Speech;
import drylap.ui.components.SpreadsheetLink;
import drylap.ui.drawn.CoverNowList;
import drylap.ui.shell.Icons;
import drylap.ui.shell.Unchanged;
import java.util.List;

/** Which openings stand open before the next rain; nothing at all where none does. */
final class CoverNowPanel extends Div {
    private final transient Speech say;
    private final transient Unchanged drawn = new Unchanged();

    CoverNowPanel(Speech say) {
        this.say = say;
    }

    void show(String where, CoverNowList list) {
        if (drawn.since(List.of(where, list))) return;
        removeAll();
        setVisible(!list.rows().isEmpty());
        if (list.rows().isEmpty()) return;
        Section panel = Panels.panel("cover-now", say.it("Cover now"));
        panel.addComponentAsFirst(Icons.DROP.svg());
        panel.add(new Paragraph(say.it("These openings stand open, and no crew closes them before it rains. "
                + "Close or cover them first.")));
        NativeTable table = table(list);
        panel.add(table, new SpreadsheetLink(say, where, say.it("Cover now"), table));
        add(panel);
    }

    private NativeTable table(CoverNowList list) {
        NativeTable table = Panels.table(
                say.it("Opening"), say.it("Where"), say.it("Next rain"), say.it("To close it"), say.it("Open since"));
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
