package drylap.ui.planner;

import com.vaadin.flow.component.html.DescriptionList;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H3;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.OrderedList;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.html.UnorderedList;
import drylap.speech.Speech;
import drylap.ui.components.OpeningGlyph;
import drylap.ui.drawn.OpeningSheet;
import drylap.ui.drawn.OpeningSheet.Standing;
import drylap.ui.shell.Icons;
import java.util.List;

/** The laps of one opening: how it stands in rain, what comes next, where the water goes. */
final class LapsPanel extends Div {
    private final transient Speech say;

    LapsPanel(Speech say, OpeningSheet sheet) {
        this.say = say;
        var panel = Panels.panel("laps-panel", say.it("Laps of {0}", sheet.opening()));
        panel.add(new Paragraph(sheet.place()));
        panel.add(standing(sheet));
        panel.add(new H3(say.it("What the crew ticks")), lines(sheet));
        panel.add(new H3(say.it("In the plan")), planned(sheet));
        panel.add(new H3(say.it("Where water goes now")), list(sheet.water()));
        panel.add(new H3(say.it("How it is designed")), facts(sheet), list(sheet.advice()));
        add(panel);
    }

    private static Div standing(OpeningSheet sheet) {
        var words = new Div(
                new Span(
                        Panels.text(sheet.ratingCode(), "rating", sheet.mayBeLeft() ? "good" : "bad"),
                        Panels.text(sheet.ratingWords(), "strong")),
                list(sheet.weaknesses()),
                new Paragraph(sheet.apron()));
        var standing = new Div(new OpeningGlyph(sheet.glyph()), words);
        standing.addClassName("standing");
        return standing;
    }

    private OrderedList lines(OpeningSheet sheet) {
        var list = new OrderedList();
        list.addClassName("lines");
        for (OpeningSheet.Line line : sheet.lines()) {
            var item = new ListItem(tick(line.standing()), Panels.text(String.valueOf(line.number()), "number"));
            item.add(Panels.text(line.text()));
            if (line.standing() == Standing.NEXT) item.add(Panels.text(say.it("next"), "flag"));
            item.addClassName(line.standing().name().toLowerCase(java.util.Locale.ROOT));
            if (line.install()) item.addClassName("block");
            list.add(item);
        }
        return list;
    }

    private Span tick(Standing standing) {
        var tick = switch (standing) {
            case DONE -> new Span(Icons.DONE.svg(), Panels.text(say.it("done"), "unseen"));
            case NEXT -> new Span(Icons.NEXT.svg());
            case LATER -> new Span();
        };
        tick.addClassName("tick");
        return tick;
    }

    private static UnorderedList planned(OpeningSheet sheet) {
        var list = new UnorderedList();
        list.addClassName("visits");
        for (OpeningSheet.Planned planned : sheet.planned())
            list.add(new ListItem(
                    Panels.mark(planned.taskCode()),
                    Panels.text(planned.task(), "strong"),
                    Panels.text(planned.when(), planned.isPlanned() ? "when" : "why-not")));
        return list;
    }

    private static DescriptionList facts(OpeningSheet sheet) {
        var list = new DescriptionList();
        sheet.facts().forEach(fact -> {
            list.add(new DescriptionList.Term(fact.name()));
            list.add(new DescriptionList.Description(fact.value()));
        });
        return list;
    }

    private static UnorderedList list(List<String> lines) {
        return new UnorderedList(lines.stream().map(ListItem::new).toArray(ListItem[]::new));
    }
}
