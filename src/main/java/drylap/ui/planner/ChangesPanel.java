package drylap.ui.planner;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.details.Details;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.NativeTable;
import com.vaadin.flow.component.html.Span;
import drylap.speech.Speech;
import drylap.ui.components.SpreadsheetLink;
import drylap.ui.drawn.PlanChanges;
import drylap.ui.drawn.VisitTime;
import drylap.ui.drawn.Words;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What a proposal would change of the published plan, with the why of each change, and what both cost. */
final class ChangesPanel extends Details {
    private static final int LINES_AT_FIRST = 60;

    private final transient Speech say;

    ChangesPanel(Speech say, String where, PlanChanges changes) {
        super(say.it("Against the published plan: {0}", changes.summary()));
        this.say = say;
        addClassName("differences");
        NativeTable table = Panels.table(
                say.it("Opening"),
                say.it("Task"),
                say.it("What changes"),
                say.it("Was"),
                say.it("Is to be"),
                say.it("Why"));
        var lines = new Div(
                table, new SpreadsheetLink(say, where, say.it("Changes of the plan"), () -> whole(changes.rows())));
        lines.addClassName("changes");
        NativeTable costs = costs(changes.costs());
        var body =
                new Div(new Div(costs, new SpreadsheetLink(say, where, say.it("Costs of both plans"), costs)), lines);
        body.addClassName("compared");
        add(body);
        fill(lines, table, changes.rows());
    }

    private void fill(Div lines, NativeTable table, List<PlanChanges.Row> rows) {
        rows.stream().limit(LINES_AT_FIRST).forEach(row -> line(table, row));
        if (rows.size() <= LINES_AT_FIRST) return;
        var all = new Button(say.it("Show all {0} changes", rows.size()));
        all.addClickListener(_ -> {
            rows.stream().skip(LINES_AT_FIRST).forEach(row -> line(table, row));
            lines.remove(all);
        });
        lines.add(all);
    }

    /** All of them, with times and crews apart. */
    private NativeTable whole(List<PlanChanges.Row> rows) {
        NativeTable table = Panels.table(
                say.it("Opening"),
                say.it("Task"),
                say.it("What changes"),
                say.it("Was"),
                say.it("Crew then"),
                say.it("Is to be"),
                say.it("Crew"),
                say.it("Why"));
        for (PlanChanges.Row row : rows)
            Panels.row(
                    table,
                    Panels.text(row.opening().value()),
                    Panels.text(say.it(Words.task(row.task()))),
                    Panels.text(row.kind()),
                    time(row.before()),
                    crew(row.before()),
                    time(row.after()),
                    crew(row.after()),
                    Panels.text(row.why()));
        return table;
    }

    private static Span crew(@Nullable VisitTime time) {
        return Panels.text(time == null ? "" : time.crew());
    }

    private Span time(@Nullable VisitTime time) {
        return time == null ? Panels.text(say.it("not planned")) : Panels.time("", time.start());
    }

    private void line(NativeTable table, PlanChanges.Row row) {
        Panels.row(
                table,
                WallsView.link(row.opening()),
                new Span(Panels.mark(row.task().code()), Panels.text(say.it(Words.task(row.task())))),
                Panels.text(row.kind(), "strong"),
                Panels.text(row.was()),
                Panels.text(row.is()),
                Panels.text(row.why()));
    }

    private NativeTable costs(List<PlanChanges.Cost> costs) {
        NativeTable table =
                Panels.table(say.it("Cost"), say.it("Published"), say.it("Proposal"), say.it("More or less"));
        for (PlanChanges.Cost cost : costs)
            Panels.row(
                    table,
                    Panels.text(cost.term()),
                    Panels.number(Words.number(cost.published()), cost.published(), ""),
                    Panels.number(Words.number(cost.proposal()), cost.proposal(), ""),
                    Panels.number(Words.difference(say, cost.more()), cost.more(), "", "strong"));
        return table;
    }
}
