package drylap.ui.planner;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.NativeTable;
import com.vaadin.flow.component.html.NativeTableCell;
import com.vaadin.flow.component.html.NativeTableHeaderCell;
import com.vaadin.flow.component.html.NativeTableRow;
import com.vaadin.flow.component.html.Span;
import drylap.speech.Speech;
import drylap.ui.components.SpreadsheetLink;
import drylap.ui.drawn.WhatIfSheet;
import drylap.ui.drawn.WhatIfSheet.Cell;
import drylap.ui.drawn.WhatIfSheet.Group;
import drylap.ui.drawn.WhatIfSheet.Line;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Outcomes side by side; on a narrow page one below the other, each cell under the name of its scenario. */
final class OutcomesPanel extends Div {
    OutcomesPanel(Speech say, String where, WhatIfSheet sheet) {
        addClassName("outcomes");
        for (Group group : sheet.groups()) {
            NativeTable table = table(sheet, group);
            add(
                    table,
                    new SpreadsheetLink(
                            say, where, say.it("What if: {0}", group.name()), () -> whole(say, sheet, group)));
        }
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

    /** A column for each scenario, and one for what it changes. */
    private static NativeTable whole(Speech say, WhatIfSheet sheet, Group group) {
        List<String> heads = new ArrayList<>(List.of(group.name(), say.it("Meaning")));
        sheet.names().forEach(name -> heads.addAll(List.of(name, say.it("{0}: change", name))));
        NativeTable table = Panels.table(heads.toArray(String[]::new));
        for (Line line : group.lines()) {
            List<Component> cells = new ArrayList<>(List.of(Panels.text(line.name()), Panels.text(line.detail())));
            line.cells().forEach(cell -> cells.addAll(List.of(number(cell.value()), Panels.text(cell.more()))));
            Panels.row(table, cells.toArray(Component[]::new));
        }
        return table;
    }

    /** Counts are shown with thin spaces between thousands; anything else is words. */
    private static Component number(String shown) {
        String digits = shown.replace("\u2009", "");
        return digits.matches("\\d{1,15}") ? Panels.number(shown, Long.parseLong(digits), "") : Panels.text(shown);
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
