package drylap.ui.planner;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.UnorderedList;
import drylap.speech.Speech;
import drylap.ui.drawn.MoveSheet;
import drylap.ui.shell.Icons;
import java.util.List;

/** What a move would break and mend, told anew with every change. */
final class VerdictPanel extends Div {
    private final transient Speech say;

    VerdictPanel(Speech say) {
        this.say = say;
        addClassName("verdict");
        getElement().setAttribute("role", "status");
    }

    void show(MoveSheet sheet) {
        removeAll();
        boolean good = sheet.legal();
        var headline = new Paragraph((good ? Icons.DONE : Icons.CAUTION).svg(), Panels.text(sheet.headline()));
        headline.addClassNames("headline", good ? "good" : "bad");
        add(headline);
        if (!sheet.broken().isEmpty()) add(list(sheet.broken()));
        if (sheet.still()) return;
        if (!sheet.mended().isEmpty()) add(new Paragraph(say.it("It mends what is broken now:")), list(sheet.mended()));
        if (good) add(new Paragraph(say.it("The plan then {0}.", sheet.cost())));
    }

    void say(String words) {
        removeAll();
        add(new Paragraph(words));
    }

    private static UnorderedList list(List<MoveSheet.Line> lines) {
        var list = new UnorderedList();
        lines.forEach(line -> list.add(
                new ListItem(Panels.text(line.rule(), "strong"), Panels.text(line.where()), Panels.text(line.what()))));
        return list;
    }
}
