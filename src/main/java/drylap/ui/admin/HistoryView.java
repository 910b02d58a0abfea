package drylap.ui.admin;

import com.vaadin.flow.component.html.Code;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.NativeTable;
import com.vaadin.flow.component.html.OrderedList;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.textfield.TextField;
import com.vaadin.flow.data.value.ValueChangeMode;
import com.vaadin.flow.router.Menu;
import com.vaadin.flow.router.Route;
import drylap.kernel.Language;
import drylap.security.Change;
import drylap.security.History;
import drylap.security.HistorySeals;
import drylap.security.HistorySeals.Head;
import drylap.security.Operation;
import drylap.security.SignedIn;
import drylap.speech.Speech;
import drylap.ui.components.SpreadsheetLink;
import drylap.ui.planner.Panels;
import drylap.ui.shell.Needs;
import drylap.ui.shell.Spoken;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Who changed what; newest first. */
@Route("history")
@Menu(title = "History", order = 80)
@Needs(Operation.SEE_HISTORY)
class HistoryView extends Div implements Spoken {
    private static final int SHOWN = 500;
    private static final ZoneId HERE = ZoneId.systemDefault();

    private final transient Speech say;
    private final transient List<Change> changes;
    private final OrderedList list = new OrderedList();

    HistoryView(History history, HistorySeals seals, SignedIn signedIn) {
        say = new Speech(signedIn.reading());
        changes = history.seenBy(signedIn.person(), SHOWN);
        addClassName("history-view");
        list.addClassName("history");
        var filter = new TextField(say.it("Only lines with"));
        filter.setClearButtonVisible(true);
        filter.setValueChangeMode(ValueChangeMode.LAZY);
        filter.addValueChangeListener(event -> show(event.getValue()));
        var panel = new Div(
                new H2(say.it("Who changed what")),
                filter,
                list,
                sealed(seals.head()),
                new SpreadsheetLink(say, "Drylap", say.it("Who changed what"), () -> whole(shown(filter.getValue()))));
        panel.addClassName("panel");
        if (say.language() != Language.ENGLISH)
            panel.addComponentAtIndex(1, new Paragraph(say.it("Each line is written once, in English, and stays so.")));
        add(panel);
        show("");
    }

    @Override
    public String called() {
        return say.it("History");
    }

    private Paragraph sealed(Optional<Head> head) {
        var words = new Paragraph(head.map(one -> say.it(
                                "Sealed in a chain of {0} lines; nobody can change one unnoticed. Note the newest seal outside the database, to be given to {1}:",
                                String.format(Locale.ROOT, "%,d", one.seq()), "./drylap history --noted")
                        + " ")
                .orElseGet(() -> say.it("Nothing is sealed yet: that takes a minute.")));
        head.map(one -> new Code(one.toString())).ifPresent(words::add);
        words.addClassName("sealed");
        return words;
    }

    private void show(String wanted) {
        list.removeAll();
        shown(wanted).stream().map(this::item).forEach(list::add);
        if (list.getComponentCount() == 0) list.add(new ListItem(say.it("Nothing so far.")));
    }

    private List<Change> shown(String wanted) {
        String part = wanted.strip().toLowerCase(Locale.ROOT);
        return changes.stream()
                .filter(change -> words(change).toLowerCase(Locale.ROOT).contains(part))
                .toList();
    }

    private NativeTable whole(List<Change> changes) {
        NativeTable table = Panels.table(say.it("When"), say.it("Who"), say.it("What"), say.it("Site"));
        changes.forEach(change -> Panels.row(
                table,
                Panels.time("", LocalDateTime.ofInstant(change.at(), HERE)),
                Panels.text(change.person()),
                Panels.text(change.what()),
                Panels.text(change.site() == null ? "" : change.site().value())));
        return table;
    }

    private ListItem item(Change change) {
        var when = new Span("%s, %s".formatted(say.day(change.at().atZone(HERE)), say.clock(change.at(), HERE)));
        when.addClassName("when");
        var what = new Span(words(change));
        what.getElement().setAttribute("lang", Language.ENGLISH.code());
        return new ListItem(when, what);
    }

    private static String words(Change change) {
        String where = change.site() == null ? "" : " (site %s)".formatted(change.site());
        return "%s %s%s".formatted(change.person(), change.what(), where);
    }
}
