package drylap.ui.planner;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.NativeTable;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Span;
import drylap.kernel.Ruler;
import drylap.speech.Speech;
import drylap.takeoff.Strip;
import drylap.takeoff.Sums;
import drylap.ui.components.SpreadsheetLink;
import drylap.ui.drawn.TakeOffSheet;

/** What each crew or each wall takes, and all together. */
final class SharesPanel extends Div {
    private static final double MM_PER_M = 1_000;
    private static final double MM_PER_FOOT = 304.8;

    private final transient Speech say;

    SharesPanel(Speech say, String where, TakeOffSheet sheet) {
        this.say = say;
        addClassNames("panel", "shares");
        Sums all = sheet.supplies().sums();
        NativeTable table = table(sheet, all);
        var scrolled = new Div(table);
        scrolled.addClassName("scrolled");
        scrolled.getElement().setAttribute("tabindex", "0");
        scrolled.getElement().setAttribute("role", "group");
        scrolled.getElement().setAttribute("aria-label", say.it("What it takes"));
        add(
                new H2(say.it("What it takes: {0}", sheet.title())),
                new Paragraph(say.it(all.counts())),
                scrolled,
                new SpreadsheetLink(say, where, say.it("What it takes"), table));
    }

    private NativeTable table(TakeOffSheet sheet, Sums all) {
        NativeTable table = Panels.table(
                sheet.parts(),
                say.it("Openings"),
                say.it("Windows"),
                say.it("Apron strip"),
                say.it("Sill pan"),
                say.it("Jamb flashing"),
                say.it("Head flashing"),
                say.it("Pan corners"),
                say.it("Sealant"),
                say.it("Fasteners"));
        sheet.shares().forEach(share -> row(table, share.name(), share.sums()));
        if (sheet.shares().size() > 1) row(table, say.it("All"), all);
        return table;
    }

    private void row(NativeTable table, String name, Sums sums) {
        Panels.row(
                table,
                Panels.text(name),
                Panels.figure(String.valueOf(sums.openings())),
                Panels.figure(String.valueOf(sums.windows())),
                stretch(sums, Strip.Kind.APRON),
                stretch(sums, Strip.Kind.PAN),
                stretch(sums, Strip.Kind.JAMB),
                stretch(sums, Strip.Kind.HEAD),
                Panels.figure(String.valueOf(sums.panCorners())),
                Panels.number("%d ml".formatted(Math.round(sums.sealantMl())), Math.round(sums.sealantMl()), "ml"),
                Panels.figure(String.valueOf(sums.fasteners())));
    }

    /** In metres, or in feet for whoever reads inches. */
    private Span stretch(Sums sums, Strip.Kind kind) {
        boolean feet = say.reading().ruler() == Ruler.INCHES;
        double value = sums.lengthMm(kind) / (feet ? MM_PER_FOOT : MM_PER_M);
        return Panels.number(say.stretch(sums.lengthMm(kind), 2), Math.rint(value * 100) / 100, feet ? "ft" : "m");
    }
}
