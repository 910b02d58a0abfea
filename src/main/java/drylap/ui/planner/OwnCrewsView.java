package drylap.ui.planner;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.dependency.CssImport;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.TextField;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.BeforeEnterObserver;
import com.vaadin.flow.router.Route;
import com.vaadin.flow.router.RouterLink;
import drylap.crews.Crew;
import drylap.kernel.Trade;
import drylap.planning.CrewDraft;
import drylap.planning.HandResult;
import drylap.security.Operation;
import drylap.security.SignedIn;
import drylap.sites.PlaceText;
import drylap.sites.Site;
import drylap.speech.Speech;
import drylap.ui.drawn.FolderShown;
import drylap.ui.drawn.Words;
import drylap.ui.shell.Desk;
import drylap.ui.shell.FolderView;
import drylap.ui.shell.Needs;
import drylap.ui.shell.Spoken;
import drylap.ui.shell.TroubleLine;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Crews of one's own and their days, put in by hand. */
@Route("own-crews")
@Needs(Operation.IMPORT_FOLDER)
@CssImport("./start.css")
class OwnCrewsView extends Div implements FolderView, BeforeEnterObserver, Spoken {
    private final transient HandDesk hand;
    private final transient Desk desk;
    private final transient Speech say;
    private final Select<Trade> trade = new Select<>();
    private final TextField name = new TextField();
    private final TextField base = new TextField();
    private final PeopleField people;
    private final TroubleLine trouble = new TroubleLine();
    private final Div said = new Div();
    private final Div there = new Div();
    private transient @Nullable DaysFields days;
    private transient @Nullable List<Object> drawn;

    OwnCrewsView(HandDesk hand, Desk desk, SignedIn signedIn) {
        this.hand = hand;
        this.desk = desk;
        say = new Speech(signedIn.person().reading());
        people = new PeopleField(say);
        addClassNames("own", "own-crews");
        there.addClassName("own");
        said.getElement().setAttribute("aria-live", "polite");
        label();
    }

    private void label() {
        trade.setLabel(say.it("What it does"));
        trade.setItems(Trade.values());
        trade.setItemLabelGenerator(one -> one == null ? "" : say.it(Words.crewOf(one)));
        name.setLabel(say.it("Name of the crew"));
        name.setHelperText(say.it("as crews are called, such as {0}", "window-1"));
        base.setLabel(say.it("Where it starts from: latitude, longitude"));
        base.setHelperText(say.it("yard or home; the way from there to the sites counts as work"));
    }

    @Override
    public String called() {
        return say.it("Own crews");
    }

    @Override
    public void beforeEnter(BeforeEnterEvent event) {
        draw();
    }

    @Override
    public void show(FolderShown shown) {
        draw();
    }

    private void draw() {
        Optional<FolderShown> own = desk.own();
        if (own.isEmpty()) {
            removeAll();
            add(noSite());
            drawn = null;
            return;
        }
        FolderShown shown = own.get();
        List<Object> now = List.of(shown.folder().crews(), shown.folder().shifts());
        if (now.equals(drawn)) return;
        if (drawn == null) begin(shown);
        drawn = now;
        trade.setValue(missing(shown));
        there.removeAll();
        shown.folder().crews().forEach(crew -> there.add(new OwnCrewPanel(hand, say, shown, crew, desk::refresh)));
    }

    private Div noSite() {
        return Panels.empty(
                say.it("No site yet"),
                Panels.text(say.it("A crew works by the clock of a site.") + " "),
                new RouterLink(say.it("Put in a site first"), OwnSitesView.class));
    }

    private void begin(FolderShown shown) {
        removeAll();
        Site first = shown.folder().sites().getFirst();
        base.setValue(PlaceText.of(first.place()));
        var fields = new DaysFields(say, hand.today(first.zone()));
        days = fields;
        var who = new Div(trade, name, people, base);
        who.addClassName("asked");
        var save = new Button(say.it("Save the crew"), _ -> save(shown));
        save.addThemeVariants(ButtonVariant.LUMO_PRIMARY);
        Section panel = Panels.panel("crew-form", say.it("A new crew"));
        panel.add(
                new Paragraph(say.it("Minutes of work are those of a crew of two (see the rules and the crews' pace); "
                        + "a crew sets windows by every method.")),
                who,
                fields,
                trouble,
                save);
        add(said, panel, there);
    }

    /** The first trade that has no crew yet. */
    private static Trade missing(FolderShown shown) {
        List<Trade> have = shown.folder().crews().stream().map(Crew::trade).toList();
        return Arrays.stream(new Trade[] {Trade.WINDOW, Trade.WRAP, Trade.SIDING, Trade.TESTER})
                .filter(one -> !have.contains(one))
                .findFirst()
                .orElse(Trade.WINDOW);
    }

    private void save(FolderShown first) {
        DaysFields fields = days;
        if (fields == null) return;
        try {
            trouble.clear();
            var draft = new CrewDraft(
                    name.getValue(),
                    ChangeFields.chosen(trade),
                    PlaceFields.place(base),
                    first.folder().sites().getFirst().zone(),
                    people.read(),
                    fields.read());
            switch (hand.add(first.stored().id(), draft)) {
                case HandResult.Refused(var why) -> trouble.say(say.it(why) + ".");
                case HandResult.Saved(var folder) -> {
                    name.clear();
                    people.clear();
                    name.focus();
                    desk.open(folder);
                    saved(draft.name());
                }
            }
        } catch (WrongField wrong) {
            trouble.say(say.it(wrong.said()));
        }
    }

    private void saved(String crew) {
        said.removeAll();
        said.add(new Paragraph(
                Panels.text(say.it("Crew {0} is saved.", crew) + " ", "strong"),
                new RouterLink(say.it("Back to the start"), StartView.class)));
        draw();
    }
}
