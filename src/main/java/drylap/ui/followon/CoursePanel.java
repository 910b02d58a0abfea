package drylap.ui.followon;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.html.DescriptionList;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H3;
import drylap.kernel.FacadeId;
import drylap.speech.Speech;
import drylap.ui.drawn.Aprons.CourseSheet;
import drylap.ui.drawn.Aprons.LineToMark;
import drylap.ui.planner.Panels;
import drylap.ui.shell.PaperLinks;
import java.util.List;
import java.util.function.UnaryOperator;

/** One course of the wall above: what is ready, where it drains, how long it may wait, what is coming. */
final class CoursePanel extends Div {
    CoursePanel(Speech say, FacadeId facade, CourseSheet course, Deeds deeds) {
        addClassName("course");
        getElement().setAttribute("role", "group");
        getElement().setAttribute("aria-label", say.it("Level {0}", course.level()));
        var head = new Div(new H3(say.it("Level {0}", course.level())), Panels.text(course.ready(), "strong"));
        head.addClassName("head");
        add(head, facts(say, course), buttons(say, course, deeds), PaperLinks.release(say, facade, course.level()));
    }

    private static DescriptionList facts(Speech say, CourseSheet course) {
        var list = new DescriptionList();
        fact(list, say.it("Lap"), course.laps(), "");
        fact(list, say.it("Sun"), course.sun(), course.sunShort() ? "alarm" : "");
        fact(list, say.it("Returned"), course.returns(), "alarm");
        fact(list, say.it("Coming"), course.coming(), "");
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

    private static Div buttons(Speech say, CourseSheet course, Deeds deeds) {
        var buttons = new Div();
        buttons.addClassName("deeds");
        var acceptable = course.acceptable();
        if (!acceptable.isEmpty()) {
            var accept = new Button(
                    acceptable.size() == 1
                            ? say.it("Accept the one released")
                            : say.it("Accept all {0} released", acceptable.size()),
                    _ -> deeds.accept(acceptable));
            accept.addThemeVariants(ButtonVariant.LUMO_PRIMARY);
            accept.setAriaLabel(say.it("{0} on level {1}", accept.getText(), course.level()));
            accept.setDisableOnClick(true);
            buttons.add(accept);
        }
        course.toMark().stream()
                .filter(line -> line.allowed() > 0)
                .forEach(line -> buttons.add(
                        mark(say, line, words -> say.it("{0} on level {1}", words, course.level()), deeds)));
        return buttons;
    }

    static Button mark(Speech say, LineToMark line, UnaryOperator<String> where, Deeds deeds) {
        int open = line.open().size();
        String words = open == 1 ? say.it("Done: {0}", line.text()) : say.it("Done at {0}: {1}", open, line.text());
        var mark = new Button(words, _ -> deeds.mark(line));
        mark.setAriaLabel(where.apply(words));
        mark.setDisableOnClick(true);
        return mark;
    }
}
