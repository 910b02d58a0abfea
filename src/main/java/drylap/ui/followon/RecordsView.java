package drylap.ui.followon;

import com.vaadin.flow.component.combobox.ComboBox;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.NativeTable;
import com.vaadin.flow.component.html.OrderedList;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.textfield.TextField;
import com.vaadin.flow.data.value.ValueChangeMode;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.BeforeEnterObserver;
import com.vaadin.flow.router.Menu;
import com.vaadin.flow.router.Route;
import com.vaadin.flow.router.RouterLink;
import drylap.kernel.Course;
import drylap.platform.News;
import drylap.security.Operation;
import drylap.security.SignedIn;
import drylap.speech.Speech;
import drylap.ui.components.SpreadsheetLink;
import drylap.ui.drawn.HandoffPapers.Row;
import drylap.ui.planner.Panels;
import drylap.ui.shell.Live;
import drylap.ui.shell.Needs;
import drylap.ui.shell.Spoken;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** What was handed over so far; newest first. */
@Route("records")
@Needs(Operation.SEE_HANDOFF_RECORD)
@Menu(title = "Hand-over records", order = 60)
public class RecordsView extends Div implements BeforeEnterObserver, Spoken {
    public static final String OPENING = "opening";
    private static final int SHOWN = 200;

    private final transient RecordDesk desk;
    private final transient SignedIn signedIn;
    private final transient Speech say;
    private final TextField opening = new TextField();
    private final ComboBox<Course> course = new ComboBox<>();
    private final OrderedList list = new OrderedList();
    private transient List<Row> rows = List.of();

    RecordsView(RecordDesk desk, SignedIn signedIn, News news) {
        this.desk = desk;
        this.signedIn = signedIn;
        say = new Speech(signedIn.reading());
        opening.setLabel(say.it("Opening"));
        course.setLabel(say.it("Course"));
        addClassName("records-view");
        list.addClassNames("records");
        opening.setClearButtonVisible(true);
        opening.setValueChangeMode(ValueChangeMode.LAZY);
        opening.addValueChangeListener(_ -> refresh());
        course.setClearButtonVisible(true);
        course.addValueChangeListener(event -> {
            if (event.isFromClient()) refresh();
        });
        var filters = new Div(opening, course);
        filters.addClassName("filters");
        var panel = Panels.panel("records-panel", called());
        panel.add(filters, list, new SpreadsheetLink(say, "Drylap", called(), () -> whole(rows)));
        add(panel);
        Live.follow(this, news, Set.of("handoff", "plan", "people"), this::refresh);
    }

    @Override
    public void beforeEnter(BeforeEnterEvent event) {
        opening.setValue(event.getLocation()
                .getQueryParameters()
                .getSingleParameter(OPENING)
                .orElse(""));
        refresh();
    }

    @Override
    public String called() {
        return say.it("Hand-over records");
    }

    private void refresh() {
        signedIn.find()
                .filter(who -> who.may(Operation.SEE_HANDOFF_RECORD))
                .ifPresentOrElse(
                        who -> show(desk.shelf(who)),
                        () -> getUI().ifPresent(ui -> ui.getPage().reload()));
    }

    private void show(RecordDesk.Shelf shelf) {
        var wanted = Optional.ofNullable(course.getValue());
        course.setItemLabelGenerator(shelf.papers()::words);
        course.setItems(shelf.papers().courses(shelf.acts()));
        wanted.ifPresent(course::setValue);
        var now = shelf.papers().rows(shelf.acts(), opening.getValue(), wanted);
        if (now.equals(rows) && list.getComponentCount() > 0) return;
        rows = now;
        list.removeAll();
        now.stream().limit(SHOWN).map(RecordsView::item).forEach(list::add);
        if (now.isEmpty()) list.add(new ListItem(say.it("Nothing was handed over yet that fits.")));
        if (now.size() > SHOWN)
            list.add(new ListItem(
                    say.it("{0} older ones: name an opening or a course to find them.", now.size() - SHOWN)));
    }

    private NativeTable whole(List<Row> rows) {
        NativeTable table = Panels.table(
                say.it("Record"),
                say.it("When"),
                say.it("What"),
                say.it("Openings"),
                say.it("Where"),
                say.it("Who"),
                say.it("Why"));
        rows.forEach(row -> Panels.row(
                table,
                Panels.number("", row.id(), ""),
                Panels.time("", row.at()),
                Panels.text(row.what()),
                Panels.text(row.openings()),
                Panels.text(row.place()),
                Panels.text(row.who()),
                Panels.text(row.why())));
        return table;
    }

    private static ListItem item(Row row) {
        var link = new RouterLink("%s: %s".formatted(row.what(), row.openings()), RecordView.class, row.id());
        var about = new Paragraph("%s · %s · %s".formatted(row.when(), row.who(), row.place()));
        var item = new ListItem(link, about);
        if (!row.why().isBlank()) item.add(new Paragraph(row.why()));
        return item;
    }
}
