package drylap.ui.windowcrew;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Span;
import drylap.kernel.FolderId;
import drylap.speech.Speech;
import drylap.ui.components.OpeningGlyph;
import drylap.ui.drawn.CrewDay.Stop;
import drylap.ui.drawn.StepsAddress;

/** One opening of the day; the whole of it leads to its steps. */
final class StopCard extends ListItem {
    private final transient Speech say;
    private final String opening;

    StopCard(Speech say, FolderId folder, Stop stop) {
        this.say = say;
        opening = stop.opening();
        addClassName("stop");
        if (!stop.way().isEmpty()) add(words("way", stop.way()));
        var steps = steps(folder, stop.opening());
        var standing = new Span(say.it(stop.standing()));
        standing.addClassNames("standing", stop.done() ? "done" : stop.ready() ? "ready" : "not-ready");
        var head = new H2(say.it("{0} to {1}", stop.from(), stop.until()) + " · %s ".formatted(stop.opening()));
        head.add(standing);
        var text = new Div(head, words("place", "%s, %s".formatted(stop.site(), stop.place())));
        if (!stop.address().isEmpty()) text.add(words("address", stop.address()));
        text.add(words("work", "%s: %s".formatted(stop.task(), stop.work())));
        stop.whyNot().forEach(why -> text.add(words("why", say.it("Not ready: {0}", why))));
        steps.add(new OpeningGlyph(stop.glyph()), text);
        add(steps);
    }

    /** Where the tester says what came of it. */
    void record(Runnable ask) {
        var button = new Button(say.it("Record the water test"), _ -> ask.run());
        button.addClassName("record");
        button.setAriaLabel(say.it("Record the water test of {0}", opening));
        add(button);
    }

    /** A page of its own, not a view: the browser goes there itself. */
    static Anchor steps(FolderId folder, String opening) {
        var steps = new Anchor(StepsAddress.of(folder, opening));
        steps.setRouterIgnore(true);
        return steps;
    }

    static Paragraph words(String name, String words) {
        var paragraph = new Paragraph(words);
        paragraph.addClassName(name);
        return paragraph;
    }
}
