package drylap.ui.followon;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.DescriptionList;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H3;
import com.vaadin.flow.component.html.Image;
import com.vaadin.flow.component.html.NativeTable;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.router.BeforeEvent;
import com.vaadin.flow.router.HasUrlParameter;
import com.vaadin.flow.router.OptionalParameter;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import com.vaadin.flow.router.RouterLink;
import drylap.security.Operation;
import drylap.security.SignedIn;
import drylap.ui.components.SpreadsheetLink;
import drylap.ui.drawn.HandoffPaper;
import drylap.ui.planner.Panels;
import drylap.ui.shell.Needs;
import drylap.ui.shell.PaperLinks;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** One record, made to be printed: who handed what over in which state, and what became of it. */
@Route("record")
@Needs(Operation.SEE_HANDOFF_RECORD)
@PageTitle("Hand-over record · Drylap")
public class RecordView extends Div implements HasUrlParameter<Long> {
    private static final String CAUTION =
            "This says in which state the laps were when they were handed over. It is no statement that work at "
                    + "height is safe, and it replaces neither local codes, the manufacturer's instructions nor a licensed inspection.";

    private final transient RecordDesk desk;
    private final transient SignedIn signedIn;

    RecordView(RecordDesk desk, SignedIn signedIn) {
        this.desk = desk;
        this.signedIn = signedIn;
        addClassName("record-view");
    }

    @Override
    public void setParameter(BeforeEvent event, @OptionalParameter @Nullable Long id) {
        removeAll();
        Optional.ofNullable(id)
                .flatMap(number -> desk.paper(signedIn.person(), number))
                .ifPresentOrElse(this::show, this::none);
    }

    private void none() {
        var panel = Panels.panel("record-panel", "No such record");
        panel.add(new Paragraph("There is none of this number at your sites."), back());
        add(panel);
    }

    private void show(HandoffPaper paper) {
        var panel = Panels.panel("record-panel", paper.title());
        panel.add(Panels.text("Hand-over record %d".formatted(paper.id()), "number"), facts(paper));
        String where = "record %d".formatted(paper.id());
        NativeTable openings = openings(paper);
        panel.add(new H3("Openings, as they were then"), openings, new SpreadsheetLink(where, "Openings", openings));
        if (!paper.photos().isEmpty()) panel.add(new H3("Photos"), photos(paper));
        NativeTable chain = chain(paper);
        panel.add(
                new H3("From hand to hand"),
                chain,
                new SpreadsheetLink(where, "From hand to hand", chain),
                new Paragraph(CAUTION));
        add(tools(paper.id()), panel);
    }

    private static Div tools(long id) {
        var print = new Button(
                "Print",
                event -> event.getSource().getUI().ifPresent(ui -> ui.getPage().executeJs("window.print()")));
        var tools = new Div(back(), PaperLinks.record(id), print);
        tools.addClassName("record-tools");
        return tools;
    }

    private static RouterLink back() {
        return new RouterLink("All hand-over records", RecordsView.class);
    }

    private static DescriptionList facts(HandoffPaper paper) {
        var list = new DescriptionList();
        paper.facts().forEach(fact -> {
            list.add(new DescriptionList.Term(fact.name()));
            list.add(new DescriptionList.Description(fact.value()));
        });
        return list;
    }

    private static NativeTable openings(HandoffPaper paper) {
        var table = Panels.table("Opening", "Where", "Rain", "State");
        paper.lines()
                .forEach(line -> Panels.row(
                        table,
                        Panels.text(line.opening(), "strong"),
                        Panels.text(line.place()),
                        Panels.text(line.rating()),
                        Panels.text(line.state())));
        return table;
    }

    private static NativeTable chain(HandoffPaper paper) {
        var table = Panels.table("When", "What", "Who", "Openings");
        paper.chain()
                .forEach(link -> Panels.row(
                        table,
                        Panels.text(link.when()),
                        link.self()
                                ? Panels.text(link.what() + " (this record)", "strong")
                                : new RouterLink(link.what(), RecordView.class, link.id()),
                        Panels.text(link.who()),
                        Panels.text(link.openings())));
        return table;
    }

    private static Div photos(HandoffPaper paper) {
        var photos = new Div();
        photos.addClassName("photos");
        int number = 0;
        for (var id : paper.photos()) photos.add(photo(id, ++number));
        return photos;
    }

    private static Anchor photo(UUID id, int number) {
        String address = "/api/photos/" + id;
        var link = new Anchor(address, new Image(address + "/thumbnail", "Photo %d of this record".formatted(number)));
        link.setRouterIgnore(true);
        return link;
    }
}
