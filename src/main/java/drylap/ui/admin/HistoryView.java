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
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import drylap.security.Change;
import drylap.security.History;
import drylap.security.HistorySeals;
import drylap.security.HistorySeals.Head;
import drylap.security.Operation;
import drylap.security.SignedIn;
import drylap.ui.components.SpreadsheetLink;
import drylap.ui.planner.Panels;
import drylap.ui.shell.Needs;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Who changed what; newest first. */
@Route("history")
@PageTitle("History · Drylap")
@Menu(title = "History", order = 80)
@Needs(Operation.SEE_HISTORY)
class HistoryView extends Div {
    private static final int SHOWN = 500;
    private static final DateTimeFormatter TIME =
            DateTimeFormatter.ofPattern("EEE d MMM, HH:mm", Locale.ENGLISH).withZone(ZoneId.systemDefault());

    private final transient List<Change> changes;
    private final OrderedList list = new OrderedList();

    HistoryView(History history, HistorySeals seals, SignedIn signedIn) {
        changes = history.seenBy(signedIn.person(), SHOWN);
        addClassName("history-view");
        list.addClassName("history");
        var filter = new TextField("Only lines with");
        filter.setClearButtonVisible(true);
        filter.setValueChangeMode(ValueChangeMode.LAZY);
        filter.addValueChangeListener(event -> show(event.getValue()));
        var panel = new Div(
                new H2("Who changed what"),
                filter,
                list,
                sealed(seals.head()),
                new SpreadsheetLink("Drylap", "Who changed what", () -> whole(shown(filter.getValue()))));
        panel.addClassName("panel");
        add(panel);
        show("");
    }

    private static Paragraph sealed(Optional<Head> head) {
        var words = new Paragraph(head.map(one ->
                        "Sealed in a chain of %,d lines; nobody can change one unnoticed. Note the newest seal outside the database, to be given to ./drylap history --noted: "
                                .formatted(one.seq()))
                .orElse("Nothing is sealed yet: that takes a minute."));
        head.map(one -> new Code(one.toString())).ifPresent(words::add);
        words.addClassName("sealed");
        return words;
    }

    private void show(String wanted) {
        list.removeAll();
        shown(wanted).stream().map(HistoryView::item).forEach(list::add);
        if (list.getComponentCount() == 0) list.add(new ListItem("Nothing so far."));
    }

    private List<Change> shown(String wanted) {
        String part = wanted.strip().toLowerCase(Locale.ROOT);
        return changes.stream()
                .filter(change -> words(change).toLowerCase(Locale.ROOT).contains(part))
                .toList();
    }

    private static NativeTable whole(List<Change> changes) {
        NativeTable table = Panels.table("When", "Who", "What", "Site");
        changes.forEach(change -> Panels.row(
                table,
                Panels.time("", LocalDateTime.ofInstant(change.at(), ZoneId.systemDefault())),
                Panels.text(change.person()),
                Panels.text(change.what()),
                Panels.text(change.site() == null ? "" : change.site().value())));
        return table;
    }

    private static ListItem item(Change change) {
        var when = new Span(TIME.format(change.at()));
        when.addClassName("when");
        return new ListItem(when, new Span(words(change)));
    }

    private static String words(Change change) {
        String where = change.site() == null ? "" : " (site %s)".formatted(change.site());
        return "%s %s%s".formatted(change.person(), change.what(), where);
    }
}
