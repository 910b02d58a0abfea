package drylap.ui.planner;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.NativeTable;
import com.vaadin.flow.component.html.Paragraph;
import drylap.intake.FolderReading;
import drylap.intake.FolderWords;
import drylap.intake.Problem;
import drylap.speech.Speech;
import drylap.ui.components.SpreadsheetLink;

/** Everything that is wrong with a folder, at once. */
final class RefusedPanel extends Div {
    RefusedPanel(Speech say, String name, FolderReading.Refused refused) {
        int count = refused.problems().size() + refused.more();
        var panel = Panels.panel("refused", say.it("{0} was not taken in", name));
        panel.add(
                new Paragraph(say.it("{0, plural, one {# problem} other {# problems}}; nothing was changed.", count)));
        NativeTable table = Panels.table(
                say.it("File"),
                say.it("Line"),
                say.it("Column"),
                say.it("What is wrong"),
                say.it("What would be accepted"));
        refused.problems().forEach(problem -> row(say, table, problem));
        panel.add(table, new SpreadsheetLink(say, name, say.it("Not taken in"), table));
        if (refused.more() > 0) panel.add(new Paragraph(say.it("… and {0} more.", refused.more())));
        add(panel);
    }

    private static void row(Speech say, NativeTable table, Problem problem) {
        Panels.row(
                table,
                Panels.text(problem.file(), "strong"),
                problem.line() > 0
                        ? Panels.number(String.valueOf(problem.line()), problem.line(), "")
                        : Panels.text("–"),
                Panels.text(problem.column().isEmpty() ? "–" : say.it(FolderWords.readCell(problem.column()))),
                Panels.text(wrong(say, problem)),
                Panels.text(say.it(FolderWords.read(problem.accepted()))));
    }

    private static String wrong(Speech say, Problem problem) {
        String wrong = say.it(FolderWords.read(problem.wrong()));
        return problem.value().isEmpty() ? wrong : wrong + ": " + say.it(FolderWords.readCell(problem.value()));
    }
}
