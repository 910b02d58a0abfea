package drylap.ui.planner;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.details.Details;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.NativeTable;
import com.vaadin.flow.component.html.Span;
import drylap.ui.drawn.PlanChanges;
import drylap.ui.drawn.Words;
import java.util.List;

/** What a proposal would change of the published plan, with the why of each change, and what both cost. */
final class ChangesPanel extends Details {
    private static final int LINES_AT_FIRST = 60;

    ChangesPanel(PlanChanges changes) {
        super("Against the published plan: " + changes.summary());
        addClassName("differences");
        NativeTable table = Panels.table("Opening", "Task", "Change", "Was", "Is to be", "Why");
        var lines = new Div(table);
        lines.addClassName("changes");
        var body = new Div(costs(changes.costs()), lines);
        body.addClassName("compared");
        add(body);
        fill(lines, table, changes.rows());
    }

    private static void fill(Div lines, NativeTable table, List<PlanChanges.Row> rows) {
        rows.stream().limit(LINES_AT_FIRST).forEach(row -> line(table, row));
        if (rows.size() <= LINES_AT_FIRST) return;
        var all = new Button("Show all %d changes".formatted(rows.size()));
        all.addClickListener(_ -> {
            rows.stream().skip(LINES_AT_FIRST).forEach(row -> line(table, row));
            lines.remove(all);
        });
        lines.add(all);
    }

    private static void line(NativeTable table, PlanChanges.Row row) {
        Panels.row(
                table,
                WallsView.link(row.opening()),
                new Span(Panels.mark(row.task().code()), Panels.text(Words.task(row.task()))),
                Panels.text(row.kind(), "strong"),
                Panels.text(row.was()),
                Panels.text(row.is()),
                Panels.text(row.why()));
    }

    private static NativeTable costs(List<PlanChanges.Cost> costs) {
        NativeTable table = Panels.table("Cost", "Published", "Proposal", "More or less");
        for (PlanChanges.Cost cost : costs)
            Panels.row(
                    table,
                    Panels.text(cost.term()),
                    Panels.text(Words.number(cost.published())),
                    Panels.text(Words.number(cost.proposal())),
                    Panels.text(Words.difference(cost.more()), "strong"));
        return table;
    }
}
