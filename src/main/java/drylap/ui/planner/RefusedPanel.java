package drylap.ui.planner;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.NativeTable;
import com.vaadin.flow.component.html.Paragraph;
import drylap.intake.FolderReading;
import drylap.intake.Problem;
import drylap.ui.components.SpreadsheetLink;

/** Everything that is wrong with a folder, at once. */
final class RefusedPanel extends Div {
    RefusedPanel(String name, FolderReading.Refused refused) {
        int count = refused.problems().size() + refused.more();
        var panel = Panels.panel("refused", "%s was not taken in".formatted(name));
        panel.add(new Paragraph("%d %s; nothing was changed.".formatted(count, count == 1 ? "problem" : "problems")));
        NativeTable table = Panels.table("File", "Line", "Column", "What is wrong", "What would be accepted");
        refused.problems().forEach(problem -> row(table, problem));
        panel.add(table, new SpreadsheetLink(name, "Not taken in", table));
        if (refused.more() > 0) panel.add(new Paragraph("… and %d more.".formatted(refused.more())));
        add(panel);
    }

    private static void row(NativeTable table, Problem problem) {
        Panels.row(
                table,
                Panels.text(problem.file(), "strong"),
                problem.line() > 0
                        ? Panels.number(String.valueOf(problem.line()), problem.line(), "")
                        : Panels.text("–"),
                Panels.text(problem.column().isEmpty() ? "–" : problem.column()),
                Panels.text(problem.wrong() + (problem.value().isEmpty() ? "" : ": " + problem.value())),
                Panels.text(problem.accepted()));
    }
}
