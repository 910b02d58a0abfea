package drylap.ui.planner;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.checkbox.Checkbox;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.NativeTable;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.select.Select;
import drylap.kernel.OpeningId;
import drylap.sites.Opening;
import drylap.speech.Speech;
import drylap.ui.drawn.ScheduleWords;
import drylap.ui.drawn.ScheduleWords.Line;
import drylap.windowschedule.Draft;
import drylap.windowschedule.OpeningOutcome.Kind;
import drylap.windowschedule.Outcome;
import java.util.List;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/** What every opening becomes, and those of the site that the schedule does not name. */
final class ScheduleOpenings extends Div {
    private static final int AT_ONCE = 50;

    /** Which openings are listed. */
    private enum Listed {
        ALL("all in the schedule", null),
        NEW("new", Kind.NEW),
        CHANGED("changed", Kind.CHANGED),
        HELD("begun, left as they are", Kind.HELD),
        SAME("same", Kind.SAME),
        MISSING("not in the schedule", null);

        private final String words;
        private final @Nullable Kind kind;

        Listed(String words, @Nullable Kind kind) {
            this.words = words;
            this.kind = kind;
        }
    }

    private final transient Speech say;
    private final transient Consumer<Draft> change;
    private final Select<Listed> listed = new Select<>();
    private final Div list = new Div();
    private final Button more;
    private int most = AT_ONCE;
    private transient @Nullable Draft draft;
    private transient @Nullable Outcome outcome;

    ScheduleOpenings(Speech say, Consumer<Draft> change) {
        this.say = say;
        more = new Button(say.it("Show more"), _ -> showMore());
        listed.setLabel(say.it("Listed"));
        this.change = change;
        listed.setItems(Listed.values());
        listed.setItemLabelGenerator(one -> one == null ? "" : say.it(one.words));
        listed.setValue(Listed.ALL);
        listed.addValueChangeListener(_ -> {
            most = AT_ONCE;
            draw();
        });
        Section panel = Panels.panel("schedule-openings", say.it("What it becomes"));
        panel.add(listed, list, more);
        add(panel);
    }

    void show(Draft now, Outcome becomes) {
        draft = now;
        outcome = becomes;
        draw();
    }

    private void showMore() {
        most += AT_ONCE;
        draw();
    }

    private void draw() {
        list.removeAll();
        Outcome now = outcome;
        if (now == null) return;
        Listed which = listed.getValue();
        if (which == Listed.MISSING) missing(now.missing());
        else
            lines(ScheduleWords.lines(say, now).stream()
                    .filter(line -> which.kind == null || line.kind() == which.kind)
                    .toList());
    }

    private void lines(List<Line> lines) {
        NativeTable table = Panels.table(
                say.it("Opening"),
                "",
                say.it("Where"),
                say.it("Rough opening"),
                say.it("Made"),
                say.it("What changes"));
        lines.stream().limit(most).forEach(line -> row(table, line));
        end(table, lines.size());
    }

    private void row(NativeTable table, Line line) {
        Panels.row(
                table,
                new Span(
                        Panels.text(line.opening(), "strong"),
                        Panels.text(" " + say.it("row {0}", line.row()), "from")),
                Panels.text(
                        ScheduleWords.kind(say, line.kind()),
                        "kind",
                        line.kind().name().toLowerCase(java.util.Locale.ROOT)),
                Panels.text(line.place()),
                Panels.text(line.size()),
                Panels.text(line.made()),
                differences(line));
    }

    /** Work has begun there: a person may say that it changes all the same. */
    private Component differences(Line line) {
        var said = new Div(Panels.text(line.differences()));
        var id = new OpeningId(line.opening());
        Draft now = draft;
        if (now == null || (line.kind() != Kind.HELD && !now.agreed().contains(id))) return said;
        var agree = new Checkbox(
                say.it("Change it all the same, but for its method"),
                now.agreed().contains(id));
        agree.setAriaLabel(say.it("Change {0} all the same, but for its method", line.opening()));
        agree.addValueChangeListener(event -> {
            if (event.isFromClient()) change.accept(now.agreeing(id, event.getValue()));
        });
        said.add(agree);
        return said;
    }

    private void missing(List<Opening> openings) {
        list.add(new Paragraph(say.it("The site has them and the schedule does not. They stay as they are.")));
        NativeTable table = Panels.table(say.it("Opening"), say.it("Where"), say.it("Rough opening"));
        openings.stream()
                .limit(most)
                .forEach(opening -> Panels.row(
                        table,
                        Panels.text(opening.id().value(), "strong"),
                        Panels.text(ScheduleWords.place(say, opening)),
                        Panels.text("%d × %d mm".formatted(opening.widthMm(), opening.heightMm()))));
        end(table, openings.size());
    }

    private void end(NativeTable table, int all) {
        var scrolled = new Div(table);
        scrolled.addClassName("scrolled");
        scrolled.getElement().setAttribute("tabindex", "0");
        scrolled.getElement().setAttribute("role", "group");
        scrolled.getElement().setAttribute("aria-label", say.it("Openings"));
        list.add(scrolled);
        if (all == 0) list.add(new Paragraph(say.it("None.")));
        if (all > most)
            list.add(new Paragraph(say.it("{0} of {1} are shown.", ScheduleWords.many(most), ScheduleWords.many(all))));
        more.setVisible(all > most);
    }
}
