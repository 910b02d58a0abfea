package drylap.ui.planner;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H3;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.UnorderedList;
import drylap.speech.Speech;
import drylap.ui.drawn.FolderShown;
import drylap.ui.drawn.ScenarioWords;
import drylap.whatif.Scenario;

/** The scenarios so far, each with its changes. */
final class ScenariosPanel extends Div {
    private final transient Speech say;
    private final transient WhatIfDesk desk;
    private final transient Runnable after;

    ScenariosPanel(Speech say, WhatIfDesk desk, Runnable after) {
        this.say = say;
        this.desk = desk;
        this.after = after;
        addClassName("scenarios");
    }

    void show(FolderShown shown) {
        removeAll();
        var all = desk.scenarios(shown);
        if (all.isEmpty()) add(new Paragraph(say.it("No scenario yet. Add a change, or bring in a file.")));
        all.forEach(one -> add(scenario(shown, one)));
    }

    private Div scenario(FolderShown shown, Scenario scenario) {
        var out = new Button(say.it("Take out"), _ -> {
            desk.takeOut(shown, scenario);
            after.run();
        });
        out.setAriaLabel(say.it("Take out scenario {0}", scenario.name()));
        var head = new Div(new H3(scenario.name()), out);
        head.addClassName("head");
        var changes = new UnorderedList();
        for (int i = 0; i < scenario.changes().size(); i++) changes.add(change(shown, scenario, i));
        var card = new Div(head, changes);
        card.addClassName("scenario");
        return card;
    }

    private ListItem change(FolderShown shown, Scenario scenario, int place) {
        String words = ScenarioWords.of(say, shown, scenario.changes().get(place));
        if (scenario.changes().size() == 1) return new ListItem(words);
        var out = new Button(say.it("Undo"), _ -> {
            desk.takeOut(shown, scenario, place);
            after.run();
        });
        out.setAriaLabel(say.it("Undo in scenario {0}: {1}", scenario.name(), words));
        return new ListItem(Panels.text(words), out);
    }
}
