package drylap.ui.planner;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.NativeTable;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Span;
import drylap.speech.Speech;
import drylap.ui.components.SpreadsheetLink;
import drylap.ui.drawn.LedgerSheet;
import drylap.ui.drawn.Words;
import java.util.Locale;

/** What the plan costs, term by term: how much of it, how heavy it weighs, what it comes to. */
final class LedgerPanel extends Div {
    LedgerPanel(Speech say, String where, LedgerSheet ledger) {
        var panel = Panels.panel("ledger", say.it("Ledger"));
        panel.add(new Paragraph(say.it(
                "What makes this plan dear. A plan with a lower sum is better; the unit is the project's own.")));
        NativeTable table = Panels.table(say.it("Term"), say.it("Amount"), say.it("Weight"), say.it("Cost"), "");
        ledger.rows().forEach(row -> add(table, row));
        Panels.row(
                table,
                Panels.text(say.it("Sum"), "strong"),
                Panels.text(""),
                Panels.text(""),
                Panels.number(Words.number(ledger.soft()), ledger.soft(), "", "strong"),
                Panels.text(""));
        panel.add(table, new SpreadsheetLink(say, where, say.it("Ledger"), table));
        if (ledger.medium() > 0)
            panel.add(new Paragraph(say.it(
                    "Tasks left out and openings left open count above all of it, with {0}.",
                    Words.number(ledger.medium()))));
        add(panel);
    }

    private static void add(NativeTable table, LedgerSheet.Row row) {
        var bar = Panels.text("", "share");
        bar.getStyle().set("--share", String.format(Locale.ROOT, "%.1f%%", row.share() * 100));
        Panels.row(
                table,
                new Span(Panels.text(row.term(), "strong"), Panels.text(row.meaning(), "meaning")),
                Panels.number(Words.number(row.amount()), row.amount(), ""),
                Panels.number("× " + Words.number(row.weight()), row.weight(), ""),
                Panels.number(Words.number(row.cost()), row.cost(), ""),
                bar);
    }
}
