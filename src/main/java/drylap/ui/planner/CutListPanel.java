package drylap.ui.planner;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.NativeDetails;
import com.vaadin.flow.component.html.NativeTable;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.UnorderedList;
import drylap.kernel.OpeningId;
import drylap.speech.Speech;
import drylap.takeoff.AlikeRolls;
import drylap.takeoff.CutList;
import drylap.takeoff.EqualCuts;
import drylap.takeoff.Piece;
import drylap.ui.components.SpreadsheetLink;
import java.util.List;

/** How rolls of one width are cut: equal cuts together, and what comes from each roll. */
final class CutListPanel extends Div {
    /** Enough for a yard; the spreadsheet has all. */
    private static final int MOST_ROWS = 120;

    private static final int MOST_NAMES = 6;

    private final transient Speech say;
    private final transient CutList cut;

    CutListPanel(Speech say, String where, CutList cut) {
        this.say = say;
        this.cut = cut;
        addClassNames("panel", "cut-list");
        String stuff = say.it("Cut list, {0} {1} wide", cut.stuff(), say.length(cut.widthMm()));
        List<AlikeRolls> alike = cut.alike();
        NativeTable table = table(alike.subList(0, Math.min(MOST_ROWS, alike.size())), MOST_NAMES);
        var scrolled = new Div(table);
        scrolled.addClassName("scrolled");
        scrolled.getElement().setAttribute("tabindex", "0");
        scrolled.getElement().setAttribute("role", "group");
        scrolled.getElement().setAttribute("aria-label", stuff);
        add(new H2(stuff), new Paragraph(say.it(cut.saying())), equal(), scrolled);
        if (alike.size() > MOST_ROWS)
            add(new Paragraph(say.it(
                    "{0} of {1} ways of cutting a roll are shown; the spreadsheet has all.", MOST_ROWS, alike.size())));
        add(new SpreadsheetLink(say, where, stuff, this::whole));
    }

    private NativeDetails equal() {
        List<EqualCuts> cuts = cut.cuts();
        var list = new UnorderedList();
        cuts.stream().limit(MOST_ROWS).forEach(one -> list.add(new ListItem(say.it(one.cut()))));
        if (cuts.size() > MOST_ROWS) list.add(new ListItem(say.it("and {0} more lengths", cuts.size() - MOST_ROWS)));
        return new NativeDetails(
                say.it("Equal cuts together ({0, plural, one {# length} other {# lengths}})", cuts.size()), list);
    }

    private NativeTable whole() {
        return table(cut.alike(), Integer.MAX_VALUE);
    }

    private NativeTable table(List<AlikeRolls> alike, int names) {
        NativeTable table = Panels.table(
                say.it("Rolls"),
                say.it("Cuts of each"),
                say.it("Strip"),
                say.it("Length"),
                say.it("Left on each"),
                say.it("For"));
        alike.forEach(rolls -> rolls.cuts().forEach(cuts -> row(table, rolls, cuts, names)));
        return table;
    }

    private void row(NativeTable table, AlikeRolls rolls, EqualCuts cuts, int names) {
        Panels.row(
                table,
                Panels.text(rolls.numbers()),
                Panels.number("%d ×".formatted(cuts.count()), cuts.count(), ""),
                Panels.text(strip(cuts.pieces().getFirst())),
                Panels.number(say.lengths(cuts.lengthMm()), cuts.lengthMm(), "mm"),
                Panels.number(say.stretch(rolls.left(), 2), rolls.left(), "mm"),
                Panels.text(openings(rolls.openings(cuts), names)));
    }

    private String strip(Piece piece) {
        String words = say.it(piece.strip().kind().words());
        return piece.of() == 1 ? words : say.it("{0}, piece {1} of {2}", words, piece.number(), piece.of());
    }

    private String openings(List<OpeningId> openings, int names) {
        String named = String.join(
                ", ", openings.stream().limit(names).map(OpeningId::value).toList());
        return openings.size() <= names ? named : say.it("{0} and {1} more", named, openings.size() - names);
    }
}
