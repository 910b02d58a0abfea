package drylap.ui.planner;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.html.UnorderedList;
import com.vaadin.flow.router.RouterLink;
import drylap.intake.FolderWords;
import drylap.speech.Speech;
import java.util.List;

/** A folder was taken in: what a person should know of it, and where to go. */
final class TakenPanel extends Div {
    TakenPanel(Speech say, String name, List<String> notes) {
        var panel = Panels.panel("taken", say.it("{0} was taken in", name));
        panel.add(new Paragraph(
                new Span(say.it("It lies on the table now and is being planned:") + " "),
                new RouterLink(say.it("see the week sheet"), WeekSheetView.class)));
        panel.add(new UnorderedList(notes.stream()
                .map(note -> new ListItem(say.it(FolderWords.read(note))))
                .toArray(ListItem[]::new)));
        add(panel);
    }
}
