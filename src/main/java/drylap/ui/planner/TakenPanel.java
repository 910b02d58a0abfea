package drylap.ui.planner;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.html.UnorderedList;
import com.vaadin.flow.router.RouterLink;
import java.util.List;

/** A folder was taken in: what a person should know of it, and where to go. */
final class TakenPanel extends Div {
    TakenPanel(String name, List<String> notes) {
        var panel = Panels.panel("taken", "%s was taken in".formatted(name));
        panel.add(new Paragraph(
                new Span("It lies on the table now and is being planned: "),
                new RouterLink("see the week sheet", WeekSheetView.class)));
        panel.add(new UnorderedList(notes.stream().map(ListItem::new).toArray(ListItem[]::new)));
        add(panel);
    }
}
