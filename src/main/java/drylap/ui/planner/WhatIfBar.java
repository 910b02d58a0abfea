package drylap.ui.planner;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.UnorderedList;
import com.vaadin.flow.component.select.Select;
import drylap.planning.PlanProgress;
import drylap.speech.Speech;
import drylap.ui.drawn.WhatIfSheet;
import drylap.ui.drawn.Words;
import drylap.whatif.WhatIfState;
import drylap.whatif.WhatIfState.Course;
import drylap.whatif.WhatIfState.Status;
import java.util.function.LongConsumer;

/** Begins and ends a comparison, and shows how each plan comes on. */
final class WhatIfBar extends Div {
    private static final long SECONDS_AT_FIRST = 10;

    private final transient Speech say;
    private final Select<Long> seconds;
    private final Button compare = new Button();
    private final Button stop = new Button();
    private final Paragraph standing = new Paragraph();
    private final UnorderedList courses = new UnorderedList();

    WhatIfBar(Speech say, LongConsumer begin, Runnable end) {
        this.say = say;
        seconds = ChangeFields.select(say.it("Time for each"));
        compare.setText(say.it("Compare"));
        stop.setText(say.it("Stop"));
        addClassName("what-if-bar");
        seconds.setItems(5L, SECONDS_AT_FIRST, 30L, 60L, 300L);
        seconds.setItemLabelGenerator(PlanBar::time);
        seconds.setValue(SECONDS_AT_FIRST);
        compare.addThemeVariants(ButtonVariant.LUMO_PRIMARY);
        compare.addClickListener(_ -> begin.accept(seconds.getValue()));
        stop.addClickListener(_ -> {
            stop.setEnabled(false);
            end.run();
        });
        stop.setVisible(false);
        standing.getElement().setAttribute("role", "status");
        var asked = new Div(seconds, compare, stop);
        asked.addClassName("asked");
        add(asked, standing, courses);
    }

    void show(WhatIfState state) {
        boolean ended = state.status().ended();
        compare.setVisible(ended);
        seconds.setVisible(ended);
        if (ended) stop.setEnabled(true);
        stop.setVisible(!ended);
        standing.setText(words(state.status()));
        courses.removeAll();
        if (!ended) state.courses().forEach(one -> courses.add(course(one, state)));
    }

    private String words(Status status) {
        return switch (status) {
            case WAITING -> say.it("Waits until another comparison has ended.");
            case PLANNING -> say.it("Each is planned for the same time. The page stays yours meanwhile.");
            case COMPARED -> say.it("Compared.");
            case STOPPED -> say.it("Stopped early: the plans below, if any, had unequal time.");
            case FAILED -> say.it("It could not be compared. Nothing was changed; the server's log says why.");
        };
    }

    private ListItem course(Course course, WhatIfState state) {
        PlanProgress progress = course.progress();
        String how = progress == null
                ? say.it("waits for its turn")
                : say.it(
                        "{0} of {1}, cost {2}, {3} not planned",
                        Math.min(progress.elapsed().toSeconds(), state.limit().toSeconds()),
                        PlanBar.time(state.limit().toSeconds()),
                        Words.number(progress.soft()),
                        Words.number(progress.unplanned()));
        return new ListItem(Panels.text(WhatIfSheet.name(say, course.name()), "strong"), Panels.text(how));
    }
}
