package drylap.ui.planner;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.details.Details;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import drylap.crews.Crew;
import drylap.crews.Shift;
import drylap.kernel.FolderId;
import drylap.speech.Speech;
import drylap.ui.drawn.CrewWords;
import drylap.ui.drawn.FolderShown;
import drylap.ui.shell.TroubleLine;
import java.util.Comparator;
import java.util.List;

/** A crew that is there: its days, and ways to give it others. */
final class OwnCrewPanel extends Div {
    private final transient HandDesk hand;
    private final transient Speech say;
    private final transient FolderId folder;
    private final transient Crew crew;
    private final transient Runnable after;
    private final TroubleLine trouble = new TroubleLine();

    OwnCrewPanel(HandDesk hand, Speech say, FolderShown shown, Crew crew, Runnable after) {
        this.hand = hand;
        this.say = say;
        this.folder = shown.stored().id();
        this.crew = crew;
        this.after = after;
        Section panel = Panels.panel("own-crew", crew.id().value());
        panel.add(new Paragraph("%s; %s".formatted(CrewWords.of(say, crew), days(shown))), trouble, people(), others());
        add(panel);
    }

    private String days(FolderShown shown) {
        List<Shift> all = shown.folder().shifts().stream()
                .filter(shift -> shift.crew().equals(crew.id()))
                .sorted(Comparator.comparing(Shift::date))
                .toList();
        if (all.isEmpty()) return say.it("no days");
        Shift last = all.getLast();
        return say.it(
                "{0, plural, one {# day} other {# days}}, {1} to {2}, the last one from {3} to {4}",
                all.size(), say.date(all.getFirst().date()), say.date(last.date()), last.start(), last.end());
    }

    private Details people() {
        var many = new PeopleField(say);
        many.show(crew.people());
        var save =
                new Button(say.it("Save the number"), _ -> send(() -> hand.setPeople(folder, crew.id(), many.read())));
        save.setAriaLabel(say.it("Save how many people crew {0} has", crew.id()));
        return new Details(say.it("How many they are"), many, save);
    }

    private Details others() {
        var fields = new DaysFields(say, hand.today(crew.zone()));
        var save =
                new Button(say.it("Save these days"), _ -> send(() -> hand.setDays(folder, crew.id(), fields.read())));
        save.setAriaLabel(say.it("Save these days of crew {0}", crew.id()));
        var remove = new Button(say.it("Remove the crew"), _ -> send(() -> hand.remove(folder, crew.id())));
        remove.setAriaLabel(say.it("Remove crew {0}", crew.id()));
        return new Details(
                say.it("Other days, or none"),
                new Paragraph(say.it("They take the place of all its days from the first of them on.")),
                fields,
                save,
                remove);
    }

    private void send(HandForm.Sender sender) {
        HandForm.send(say, trouble, after, sender);
    }
}
