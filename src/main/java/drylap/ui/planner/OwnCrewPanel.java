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
import drylap.ui.drawn.Words;
import drylap.ui.shell.TroubleLine;
import java.util.Comparator;
import java.util.List;

/** A crew that is there: its days, and ways to give it others. */
final class OwnCrewPanel extends Div {
    private final transient HandDesk hand;
    private final transient FolderId folder;
    private final transient Crew crew;
    private final transient Runnable after;
    private final TroubleLine trouble = new TroubleLine();

    OwnCrewPanel(HandDesk hand, FolderShown shown, Crew crew, Runnable after) {
        this.hand = hand;
        this.folder = shown.stored().id();
        this.crew = crew;
        this.after = after;
        Section panel = Panels.panel("own-crew", crew.id().value());
        panel.add(
                new Paragraph("%s; %s".formatted(CrewWords.of(Speech.ENGLISH, crew), days(shown))),
                trouble,
                people(),
                others());
        add(panel);
    }

    private String days(FolderShown shown) {
        List<Shift> all = shown.folder().shifts().stream()
                .filter(shift -> shift.crew().equals(crew.id()))
                .sorted(Comparator.comparing(Shift::date))
                .toList();
        if (all.isEmpty()) return "no days";
        Shift last = all.getLast();
        return "%,d days, %s to %s, the last one from %s to %s"
                .formatted(
                        all.size(),
                        Words.date(all.getFirst().date()),
                        Words.date(last.date()),
                        last.start(),
                        last.end());
    }

    private Details people() {
        var many = new PeopleField();
        many.show(crew.people());
        var save = new Button("Save the number", _ -> send(() -> hand.setPeople(folder, crew.id(), many.read())));
        save.setAriaLabel("Save how many people crew %s has".formatted(crew.id()));
        return new Details("How many they are", many, save);
    }

    private Details others() {
        var fields = new DaysFields(hand.today(crew.zone()));
        var save = new Button("Save these days", _ -> send(() -> hand.setDays(folder, crew.id(), fields.read())));
        save.setAriaLabel("Save these days of crew " + crew.id());
        var remove = new Button("Remove the crew", _ -> send(() -> hand.remove(folder, crew.id())));
        remove.setAriaLabel("Remove crew " + crew.id());
        return new Details(
                "Other days, or none",
                new Paragraph("They take the place of all its days from the first of them on."),
                fields,
                save,
                remove);
    }

    private void send(HandForm.Sender sender) {
        HandForm.send(trouble, after, sender);
    }
}
