package drylap.ui.planner;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.NativeTable;
import com.vaadin.flow.component.html.NativeTableCell;
import com.vaadin.flow.component.html.NativeTableHeaderCell;
import com.vaadin.flow.component.html.NativeTableRow;
import com.vaadin.flow.component.html.Span;
import drylap.ui.drawn.WhatIfSheet;
import drylap.ui.drawn.WhatIfSheet.Cell;
import drylap.ui.drawn.WhatIfSheet.Group;
import drylap.ui.drawn.WhatIfSheet.Line;
import java.util.Locale;

/** Outcomes side by side; on a narrow page one below the other, each cell under the name of its scenario. */
final class OutcomesPanel extends Div {
    OutcomesPanel(WhatIfSheet sheet) {
        addClassName("outcomes");
        sheet.groups().forEach(group -> add(table(sheet, group)));
    }

    private static NativeTable table(WhatIfSheet sheet, Group group) {
        NativeTable table = Panels.table();
        NativeTableRow head = new NativeTableRow(head(group.name(), "col"));
        sheet.names().forEach(name -> head.add(head(name, "col")));
        table.getHead().removeAll();
        table.getHead().add(head);
        group.lines().forEach(line -> table.getBody().add(row(sheet, line)));
        return table;
    }

    private static NativeTableRow row(WhatIfSheet sheet, Line line) {
        var name = head("", "row");
        name.add(Panels.text(line.name(), "strong"), Panels.text(line.detail(), "meaning"));
        var row = new NativeTableRow(name);
        for (int i = 0; i < line.cells().size(); i++)
            row.add(cell(sheet.names().get(i), line.cells().get(i)));
        return row;
    }

    private static NativeTableHeaderCell head(String words, String scope) {
        var head = new NativeTableHeaderCell(words);
        head.getElement().setAttribute("scope", scope);
        return head;
    }

    private static Component cell(String name, Cell cell) {
        var whose = Panels.text(name, "whose");
        var more = Panels.text(cell.more(), "more", cell.trend().name().toLowerCase(Locale.ROOT));
        more.setVisible(!cell.more().isEmpty());
        return new NativeTableCell(whose, new Span(Panels.text(cell.value(), "value"), more));
    }
}
