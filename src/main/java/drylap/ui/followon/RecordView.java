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
import com.vaadin.flow.router.Route;
import com.vaadin.flow.router.RouterLink;
import drylap.security.Operation;
import drylap.security.SignedIn;
import drylap.speech.Speech;
import drylap.ui.components.SpreadsheetLink;
import drylap.ui.drawn.HandoffPaper;
import drylap.ui.planner.Panels;
import drylap.ui.shell.Needs;
import drylap.ui.shell.PaperLinks;
import drylap.ui.shell.Spoken;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** One record, made to be printed: who handed what over in which state, and what became of it. */
@Route("record")
@Needs(Operation.SEE_HANDOFF_RECORD)
public class RecordView extends Div implements HasUrlParameter<Long>, Spoken {
    private static final String CAUTION =
            "This says in which state the laps were when they were handed over. It is no statement that work at "
                    + "height is safe, and it replaces neither local codes, the manufacturer's instructions nor a licensed inspection.";

    private final transient RecordDesk desk;
    private final transient SignedIn signedIn;
    private final transient Speech say;

    RecordView(RecordDesk desk, SignedIn signedIn) {
        this.desk = desk;
        this.signedIn = signedIn;
        say = new Speech(signedIn.reading());
        addClassName("record-view");
    }

    @Override
    public String called() {
        return say.it("Hand-over record");
    }

    @Override
    public void setParameter(BeforeEvent event, @OptionalParameter @Nullable Long id) {
        removeAll();
        Optional.ofNullable(id)
                .flatMap(number -> desk.paper(signedIn.person(), number))
                .ifPresentOrElse(this::show, this::none);
    }

    private void none() {
        var panel = Panels.panel("record-panel", say.it("No such record"));
        panel.add(new Paragraph(say.it("There is none of this number at your sites.")), back());
        add(panel);
    }

    private void show(HandoffPaper paper) {
        var panel = Panels.panel("record-panel", paper.title());
        String number = say.it("Hand-over record {0}", paper.id());
        panel.add(Panels.text(number, "number"), facts(paper));
        String then = say.it("Openings, as they were then");
        NativeTable openings = openings(paper);
        panel.add(new H3(then), openings, new SpreadsheetLink(say, number, then, openings));
        if (!paper.photos().isEmpty()) panel.add(new H3(say.it("Photos")), photos(paper));
        String hands = say.it("From hand to hand");
        NativeTable chain = chain(paper);
        panel.add(new H3(hands), chain, new SpreadsheetLink(say, number, hands, chain), new Paragraph(say.it(CAUTION)));
        add(tools(paper.id()), panel);
    }

    private Div tools(long id) {
        var print = new Button(
                say.it("Print"),
                event -> event.getSource().getUI().ifPresent(ui -> ui.getPage().executeJs("window.print()")));
        var tools = new Div(back(), PaperLinks.record(say, id), print);
        tools.addClassName("record-tools");
        return tools;
    }

    private RouterLink back() {
        return new RouterLink(say.it("All hand-over records"), RecordsView.class);
    }

    private static DescriptionList facts(HandoffPaper paper) {
        var list = new DescriptionList();
        paper.facts().forEach(fact -> {
            list.add(new DescriptionList.Term(fact.name()));
            list.add(new DescriptionList.Description(fact.value()));
        });
        return list;
    }

    private NativeTable openings(HandoffPaper paper) {
        var table = Panels.table(say.it("Opening"), say.it("Where"), say.it("Rain"), say.it("State"));
        paper.lines()
                .forEach(line -> Panels.row(
                        table,
                        Panels.text(line.opening(), "strong"),
                        Panels.text(line.place()),
                        Panels.text(line.rating()),
                        Panels.text(line.state())));
        return table;
    }

    private NativeTable chain(HandoffPaper paper) {
        var table = Panels.table(say.it("When"), say.it("What"), say.it("Who"), say.it("Openings"));
        paper.chain()
                .forEach(link -> Panels.row(
                        table,
                        Panels.text(link.when()),
                        link.self()
                                ? Panels.text(say.it("{0} (this record)", link.what()), "strong")
                                : new RouterLink(link.what(), RecordView.class, link.id()),
                        Panels.text(link.who()),
                        Panels.text(link.openings())));
        return table;
    }

    private Div photos(HandoffPaper paper) {
        var photos = new Div();
        photos.addClassName("photos");
        int number = 0;
        for (var id : paper.photos()) photos.add(photo(id, ++number));
        return photos;
    }

    private Anchor photo(UUID id, int number) {
        String address = "/api/photos/" + id;
        var link = new Anchor(address, new Image(address + "/thumbnail", say.it("Photo {0} of this record", number)));
        link.setRouterIgnore(true);
        return link;
    }
}
