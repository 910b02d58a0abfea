package drylap.ui.planner;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.details.Details;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.NativeTable;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Span;
import drylap.kernel.OpeningId;
import drylap.speech.Speech;
import drylap.ui.components.SpreadsheetLink;
import drylap.ui.drawn.NotPlanned;
import java.util.Optional;
import java.util.stream.Stream;

/** What the plan leaves out, and why. */
final class NotPlannedPanel extends Div {
    /** Answers what would plan a task that is left out; nothing where nobody may ask. */
    interface Remedies {
        Optional<BesidePage> of(NotPlanned.Row row);
    }

    private final transient Speech say;
    private final String where;
    private final transient Remedies remedies;

    NotPlannedPanel(Speech say, String where, NotPlanned left, boolean planned, Remedies remedies) {
        this.say = say;
        this.where = where;
        this.remedies = remedies;
        var panel = Panels.panel("not-planned", say.it("Not planned"));
        if (!planned) panel.add(new Paragraph(say.it("There is no plan yet.")));
        else if (left.count() == 0) panel.add(new Paragraph(say.it("Every task has its place in the plan.")));
        left.groups().forEach(group -> panel.add(group(group)));
        add(panel);
    }

    private Details group(NotPlanned.Group group) {
        var summary = new Span(
                Panels.text(String.valueOf(group.rows().size()), "count"), Panels.text(group.reason(), "strong"));
        summary.addClassName("reason");
        var details = new Details(
                summary,
                new Paragraph(group.remedy()),
                table(group),
                new SpreadsheetLink(say, where, say.it("Not planned: {0}", group.reason()), () -> whole(group)));
        details.setOpened(group.rows().size() <= 8);
        return details;
    }

    private LongTable table(NotPlanned.Group group) {
        NativeTable table = Panels.table(
                say.it("Opening"), say.it("Task"), say.it("Where"), say.it("Why"), say.it("What would plan it"));
        String all =
                say.it("Show all {0} that are not planned: {1}", group.rows().size(), group.reason());
        return new LongTable(
                say,
                all,
                table,
                group.rows(),
                row -> line(
                        table, row, remedies.of(row).<Component>map(ask -> ask).orElseGet(() -> Panels.text(""))));
    }

    private NativeTable whole(NotPlanned.Group group) {
        NativeTable table = Panels.table(say.it("Opening"), say.it("Task"), say.it("Where"), say.it("Why"));
        group.rows().forEach(row -> line(table, row));
        return table;
    }

    private static void line(NativeTable table, NotPlanned.Row row, Component... more) {
        Stream<Component> told = Stream.of(
                WallsView.link(new OpeningId(row.opening())),
                new Span(Panels.mark(row.taskCode()), Panels.text(row.task())),
                Panels.text(row.place()),
                Panels.text(row.detail()));
        Panels.row(table, Stream.concat(told, Stream.of(more)).toArray(Component[]::new));
    }
}
