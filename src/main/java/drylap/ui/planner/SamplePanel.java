package drylap.ui.planner;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.html.UnorderedList;
import drylap.demo.SampleResult;
import drylap.security.Operation;
import drylap.security.Person;
import drylap.speech.Saying;
import drylap.speech.Speech;
import java.util.List;
import java.util.function.Function;

/** Brings the invented week in while there is nothing else, and takes it away again; nothing is shown where neither can be. */
final class SamplePanel extends Div {
    private final transient Person who;
    private final transient Runnable after;
    private final transient Speech say;
    private final Div outcome = new Div();

    SamplePanel(StartDesk start, Person who, boolean there, boolean mayLoad, Runnable after) {
        this.who = who;
        this.after = after;
        say = new Speech(who.reading());
        outcome.getElement().setAttribute("role", "alert");
        if (!who.may(Operation.CHANGE_SAMPLE)) return;
        if (there) add(away(start));
        else if (mayLoad) add(load(start));
    }

    private Section load(StartDesk start) {
        Section panel = Panels.panel("sample", say.it("Look around first"));
        panel.add(
                new Paragraph(
                        say.it(
                                "An invented contractor's week: four sites, some 120 openings, rain in it, a published plan. "
                                        + "Its people may not sign in here. It goes again with one click, as long as no work of your own hangs on it.")),
                button(say.it("Load the invented week"), start::loadSample),
                outcome);
        return panel;
    }

    private Section away(StartDesk start) {
        Section panel = Panels.panel("sample", say.it("The invented week is loaded"));
        panel.add(
                new Paragraph(say.it(
                        "Its sites, crews, plans, marks and people are made up. Taking it away takes exactly those, "
                                + "and nothing that you put in. The history keeps that it was there.")),
                button(say.it("Take the invented week away"), start::removeSample),
                outcome);
        return panel;
    }

    private Button button(String words, Function<Person, SampleResult> act) {
        var button = new Button(words);
        button.setDisableOnClick(true);
        button.addClickListener(_ -> {
            outcome.removeAll();
            switch (act.apply(who)) {
                case SampleResult.Done _ -> after.run();
                case SampleResult.Refused(var why) -> {
                    refuse(why);
                    button.setEnabled(true);
                }
            }
        });
        return button;
    }

    private void refuse(List<Saying> why) {
        var said = new Paragraph(say.it("Nothing was changed."));
        said.addClassName("trouble");
        outcome.add(
                said,
                new UnorderedList(why.stream().map(say::it).map(ListItem::new).toArray(ListItem[]::new)));
    }
}
