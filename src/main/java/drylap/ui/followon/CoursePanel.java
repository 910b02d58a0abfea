package drylap.ui.followon;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.html.DescriptionList;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H3;
import drylap.kernel.FacadeId;
import drylap.ui.drawn.Aprons.CourseSheet;
import drylap.ui.drawn.Aprons.LineToMark;
import drylap.ui.planner.Panels;
import drylap.ui.shell.PaperLinks;
import java.util.List;

/** One course of the wall above: what is ready, where it drains, how long it may wait, what is coming. */
final class CoursePanel extends Div {
    CoursePanel(FacadeId facade, CourseSheet course, Deeds deeds) {
        addClassName("course");
        getElement().setAttribute("role", "group");
        getElement().setAttribute("aria-label", "Level " + course.level());
        var head = new Div(new H3("Level " + course.level()), Panels.text(course.ready(), "strong"));
        head.addClassName("head");
        add(head, facts(course), buttons(course, deeds), PaperLinks.release(facade, course.level()));
    }

    private static DescriptionList facts(CourseSheet course) {
        var list = new DescriptionList();
        fact(list, "Lap", course.laps(), "");
        fact(list, "Sun", course.sun(), course.sunShort() ? "alarm" : "");
        fact(list, "Returned", course.returns(), "alarm");
        fact(list, "Coming", course.coming(), "");
        return list;
    }

    private static void fact(DescriptionList list, String name, List<String> lines, String look) {
        if (lines.isEmpty()) return;
        list.add(new DescriptionList.Term(name));
        for (String line : lines) {
            var said = new DescriptionList.Description(line);
            if (!look.isEmpty()) said.addClassName(look);
            list.add(said);
        }
    }

    private static Div buttons(CourseSheet course, Deeds deeds) {
        var buttons = new Div();
        buttons.addClassName("deeds");
        var acceptable = course.acceptable();
        if (!acceptable.isEmpty()) {
            var accept = new Button(
                    acceptable.size() == 1
                            ? "Accept the one released"
                            : "Accept all %d released".formatted(acceptable.size()),
                    _ -> deeds.accept(acceptable));
            accept.addThemeVariants(ButtonVariant.LUMO_PRIMARY);
            accept.setAriaLabel("%s on level %d".formatted(accept.getText(), course.level()));
            accept.setDisableOnClick(true);
            buttons.add(accept);
        }
        course.toMark().stream()
                .filter(line -> line.allowed() > 0)
                .forEach(line -> buttons.add(mark(line, " on level " + course.level(), deeds)));
        return buttons;
    }

    static Button mark(LineToMark line, String where, Deeds deeds) {
        String of =
                line.open().size() == 1 ? "" : " at %d".formatted(line.open().size());
        var mark = new Button("Done%s: %s".formatted(of, line.text()), _ -> deeds.mark(line));
        mark.setAriaLabel(mark.getText() + where);
        mark.setDisableOnClick(true);
        return mark;
    }
}
