package drylap.ui.planner;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.NativeTable;
import com.vaadin.flow.component.html.NativeTableCell;
import com.vaadin.flow.component.html.NativeTableHeaderCell;
import com.vaadin.flow.component.html.NativeTableRow;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.html.UnorderedList;
import com.vaadin.flow.router.RouterLink;
import drylap.speech.Saying;
import drylap.speech.Speech;
import drylap.tables.Cell;
import drylap.ui.components.SpreadsheetLink;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** The few shapes that the panels are made of. */
public final class Panels {
    private Panels() {}

    /** A section that is named by its heading. */
    public static Section panel(String name, String heading) {
        var section = new Section(new H2(heading));
        section.addClassNames("panel", name);
        section.getElement().setAttribute("aria-label", heading);
        return section;
    }

    public static NativeTable table(String... heads) {
        var table = new NativeTable();
        var row = new NativeTableRow();
        for (String head : heads) {
            var cell = new NativeTableHeaderCell(head);
            cell.getElement().setAttribute("scope", "col");
            row.add(cell);
        }
        table.getHead().add(row);
        return table;
    }

    public static void row(NativeTable table, Component... cells) {
        table.getBody()
                .add(new NativeTableRow(
                        Stream.of(cells).map(NativeTableCell::new).toArray(Component[]::new)));
    }

    /** A number that is shown in words, with its unit. */
    public static Span number(String shown, double value, String unit, String... classes) {
        return SpreadsheetLink.typed(text(shown, classes), new Cell.Number(value, unit));
    }

    /** A number where the words are one and nothing else. */
    public static Span figure(String shown) {
        return shown.matches("-?\\d{1,15}(\\.\\d+)?") ? number(shown, Double.parseDouble(shown), "") : text(shown);
    }

    /** By the clock on the wall of its site; null shows as words only. */
    public static Span time(String shown, @Nullable LocalDateTime at, String... classes) {
        return at == null ? text(shown, classes) : SpreadsheetLink.typed(text(shown, classes), new Cell.Time(at));
    }

    public static Span day(String shown, LocalDate date, String... classes) {
        return SpreadsheetLink.typed(text(shown, classes), new Cell.Day(date));
    }

    public static Span text(String text, String... classes) {
        var span = new Span(text);
        span.addClassNames(classes);
        return span;
    }

    /** Says in {@code outcome} whether a file was taken in, or all that is wrong with it. */
    static void tell(Speech say, Div outcome, String file, List<Saying> wrong) {
        outcome.removeAll();
        if (wrong.isEmpty()) {
            outcome.add(new Paragraph(say.it("{0} was taken in.", file)));
            return;
        }
        var said = new Paragraph(say.it("{0} was not taken in; nothing was changed.", file));
        said.addClassName("trouble");
        outcome.add(
                said,
                new UnorderedList(wrong.stream().map(say::it).map(ListItem::new).toArray(ListItem[]::new)));
    }

    /** The letter of a task on its colour, as on the sheet. */
    static Span mark(String taskCode) {
        var mark = text(taskCode.substring(0, 1).toUpperCase(java.util.Locale.ROOT), "task-mark", taskCode);
        mark.getElement().setAttribute("aria-hidden", "true");
        return mark;
    }

    static Div empty(Speech say) {
        var there = new RouterLink(say.it("Bring in a job folder"), JobFoldersView.class);
        var start = new RouterLink(say.it("begin with a site of your own"), StartView.class);
        var nothing = text(say.it("There is nothing to plan.") + " ");
        return empty(say.it("No job folder yet"), nothing, there, text(say.it(", or") + " "), start);
    }

    /** For screens that are about openings, as long as a folder has none. */
    static Div noOpening(Speech say) {
        return empty(
                say.it("No opening yet"),
                new RouterLink(say.it("Take in a window schedule"), WindowScheduleView.class));
    }

    static Div empty(String heading, Component... said) {
        var empty = new Div(new H2(heading), new Paragraph(said));
        empty.addClassName("empty");
        return empty;
    }
}
