package drylap.ui.planner;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H3;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.UnorderedList;
import drylap.ui.drawn.FolderShown;
import drylap.ui.drawn.ScenarioWords;
import drylap.whatif.Scenario;

/** The scenarios so far, each with its changes. */
final class ScenariosPanel extends Div {
    private final transient WhatIfDesk desk;
    private final transient Runnable after;

    ScenariosPanel(WhatIfDesk desk, Runnable after) {
        this.desk = desk;
        this.after = after;
        addClassName("scenarios");
    }

    void show(FolderShown shown) {
        removeAll();
        var all = desk.scenarios(shown);
        if (all.isEmpty()) add(new Paragraph("No scenario yet. Add a change, or bring in a file."));
        all.forEach(one -> add(scenario(shown, one)));
    }

    private Div scenario(FolderShown shown, Scenario scenario) {
        var out = new Button("Take out", _ -> {
            desk.takeOut(shown, scenario);
            after.run();
        });
        out.setAriaLabel("Take out scenario " + scenario.name());
        var head = new Div(new H3(scenario.name()), out);
        head.addClassName("head");
        var changes = new UnorderedList();
        for (int i = 0; i < scenario.changes().size(); i++) changes.add(change(shown, scenario, i));
        var card = new Div(head, changes);
        card.addClassName("scenario");
        return card;
    }

    private ListItem change(FolderShown shown, Scenario scenario, int place) {
        String words = ScenarioWords.of(shown, scenario.changes().get(place));
        if (scenario.changes().size() == 1) return new ListItem(words);
        var out = new Button("Undo", _ -> {
            desk.takeOut(shown, scenario, place);
            after.run();
        });
        out.setAriaLabel("Undo in scenario %s: %s".formatted(scenario.name(), words));
        return new ListItem(Panels.text(words), out);
    }
}
