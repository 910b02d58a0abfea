package drylap.ui.planner;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.NativeTable;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.html.Span;
import drylap.kernel.Task;
import drylap.ui.components.SpreadsheetLink;
import drylap.ui.drawn.ForecastChange;
import drylap.ui.drawn.ForecastChange.VisitRow;
import drylap.ui.drawn.ForecastChange.WallRow;
import drylap.ui.drawn.Words;
import java.util.List;

/** What a forecast changed, as tables. */
final class ForecastChangePanels {
    private ForecastChangePanels() {}

    static Section breaks(String where, ForecastChange change, boolean published) {
        int many = change.breaks().size();
        Section panel = Panels.panel(
                many == 0 ? "held" : "broken",
                many == 0
                        ? "No published visit breaks"
                        : "%d published %s".formatted(many, many == 1 ? "visit breaks" : "visits break"));
        if (!published) panel.add(new Paragraph("No plan of this folder is published, so none can break."));
        if (many > 0) visits(panel, new Listed(where, "Visits that break", "Why it breaks"), change.breaks());
        return panel;
    }

    static Section mends(String where, ForecastChange change) {
        Section panel = Panels.panel(
                "mended",
                change.mends().size() == 1
                        ? "1 published visit holds again"
                        : "%d published visits hold again"
                                .formatted(change.mends().size()));
        visits(panel, new Listed(where, "Visits that hold again", "What was in its way"), change.mends());
        return panel;
    }

    static Section walls(String where, ForecastChange change) {
        Section panel = Panels.panel("shifted", "What opened and what shut");
        if (change.walls().isEmpty()) {
            panel.add(new Paragraph("No hour of any wall changes."));
            return panel;
        }
        NativeTable table = Panels.table("Wall", "Task", "Opened", "Shut", "In all");
        change.walls().forEach(row -> wall(table, row));
        panel.add(table, new SpreadsheetLink(where, "What opened and what shut", table));
        if (change.same() > 0)
            panel.add(new Paragraph("As before: %d %s of a wall and a task."
                    .formatted(change.same(), change.same() == 1 ? "pair" : "pairs")));
        return panel;
    }

    private static void wall(NativeTable table, WallRow row) {
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

    /** A list of visits: of which site, what it is, and the head of its reasons. */
    private record Listed(String where, String what, String why) {}

    private static void visits(Section panel, Listed listed, List<VisitRow> rows) {
        NativeTable table = Panels.table("Opening", "Task", "Published for", listed.why());
        rows.forEach(row -> Panels.row(
                table,
                WallsView.link(row.opening()),
                task(row.task()),
                Panels.text(row.when()),
                Panels.text(row.why())));
        panel.add(table, new SpreadsheetLink(listed.where(), listed.what(), () -> whole(listed, rows)));
    }

    /** With times and crews apart. */
    private static NativeTable whole(Listed listed, List<VisitRow> rows) {
        NativeTable table = Panels.table("Opening", "Task", "Published for", "Crew", listed.why());
        rows.forEach(row -> Panels.row(
                table,
                Panels.text(row.opening().value()),
                Panels.text(Words.task(row.task())),
                Panels.time(row.when(), row.time().start()),
                Panels.text(row.time().crew()),
                Panels.text(row.why())));
        return table;
    }

    private static Span task(Task task) {
        return new Span(Panels.mark(task.code()), Panels.text(Words.task(task)));
    }
}
