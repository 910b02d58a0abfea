package drylap.ui.planner;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.NativeTable;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.html.Span;
import drylap.kernel.Task;
import drylap.speech.Speech;
import drylap.ui.components.SpreadsheetLink;
import drylap.ui.drawn.ForecastChange;
import drylap.ui.drawn.ForecastChange.VisitRow;
import drylap.ui.drawn.ForecastChange.WallRow;
import drylap.ui.drawn.Words;
import java.util.List;

/** What a forecast changed, as tables. */
final class ForecastChangePanels {
    private final Speech say;
    private final String where;

    /** @param where the name of the folder, for files */
    ForecastChangePanels(Speech say, String where) {
        this.say = say;
        this.where = where;
    }

    Section breaks(ForecastChange change, boolean published) {
        int many = change.breaks().size();
        Section panel = Panels.panel(
                many == 0 ? "held" : "broken",
                many == 0
                        ? say.it("No published visit breaks")
                        : say.it("{0, plural, one {# published visit breaks} other {# published visits break}}", many));
        if (!published) panel.add(new Paragraph(say.it("No plan of this folder is published, so none can break.")));
        if (many > 0) visits(panel, new Listed(say.it("Visits that break"), say.it("Why it breaks")), change.breaks());
        return panel;
    }

    Section mends(ForecastChange change) {
        Section panel = Panels.panel(
                "mended",
                say.it(
                        "{0, plural, one {# published visit holds again} other {# published visits hold again}}",
                        change.mends().size()));
        visits(panel, new Listed(say.it("Visits that hold again"), say.it("What was in its way")), change.mends());
        return panel;
    }

    Section walls(ForecastChange change) {
        Section panel = Panels.panel("shifted", say.it("What opened and what shut"));
        if (change.walls().isEmpty()) {
            panel.add(new Paragraph(say.it("No hour of any wall changes.")));
            return panel;
        }
        NativeTable table =
                Panels.table(say.it("Wall"), say.it("Task"), say.it("Opened"), say.it("Shut"), say.it("In all"));
        change.walls().forEach(row -> wall(table, row));
        panel.add(table, new SpreadsheetLink(say, where, say.it("What opened and what shut"), table));
        if (change.same() > 0)
            panel.add(new Paragraph(say.it(
                    "As before: {0, plural, one {# pair} other {# pairs}} of a wall and a task.", change.same())));
        return panel;
    }

    private void wall(NativeTable table, WallRow row) {
        Panels.row(
                table,
                Panels.text(row.facade().facade(), "strong"),
                task(row.task()),
                lines(row.opened(), "opened", "+"),
                lines(row.shut(), "shut", "\u2212"),
                Panels.text(row.hours()));
    }

    /** A sign before each line, so that it is not the column alone that tells them apart. */
    private static Div lines(List<String> days, String kind, String sign) {
        var lines = new Div();
        lines.addClassNames("hours-moved", kind);
        days.forEach(day -> lines.add(new Div(sign + " " + day)));
        if (days.isEmpty()) lines.setText("\u2013");
        return lines;
    }

    /** A list of visits: what it is, and the head of its reasons. */
    private record Listed(String what, String why) {}

    private void visits(Section panel, Listed listed, List<VisitRow> rows) {
        NativeTable table = Panels.table(say.it("Opening"), say.it("Task"), say.it("Published for"), listed.why());
        rows.forEach(row -> Panels.row(
                table,
                WallsView.link(row.opening()),
                task(row.task()),
                Panels.text(row.when()),
                Panels.text(row.why())));
        panel.add(table, new SpreadsheetLink(say, where, listed.what(), () -> whole(listed, rows)));
    }

    /** With times and crews apart. */
    private NativeTable whole(Listed listed, List<VisitRow> rows) {
        NativeTable table =
                Panels.table(say.it("Opening"), say.it("Task"), say.it("Published for"), say.it("Crew"), listed.why());
        rows.forEach(row -> Panels.row(
                table,
                Panels.text(row.opening().value()),
                Panels.text(say.it(Words.task(row.task()))),
                Panels.time(row.when(), row.time().start()),
                Panels.text(row.time().crew()),
                Panels.text(row.why())));
        return table;
    }

    private Span task(Task task) {
        return new Span(Panels.mark(task.code()), Panels.text(say.it(Words.task(task))));
    }
}
