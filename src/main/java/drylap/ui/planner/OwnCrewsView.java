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
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import com.vaadin.flow.router.RouterLink;
import drylap.crews.Crew;
import drylap.kernel.Trade;
import drylap.planning.CrewDraft;
import drylap.planning.HandResult;
import drylap.security.Operation;
import drylap.sites.PlaceText;
import drylap.sites.Site;
import drylap.ui.drawn.FolderShown;
import drylap.ui.drawn.Words;
import drylap.ui.shell.Desk;
import drylap.ui.shell.FolderView;
import drylap.ui.shell.Needs;
import drylap.ui.shell.TroubleLine;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Crews of one's own and their days, put in by hand. */
@Route("own-crews")
@Needs(Operation.IMPORT_FOLDER)
@PageTitle("Own crews · Drylap")
@CssImport("./start.css")
class OwnCrewsView extends Div implements FolderView, BeforeEnterObserver {
    private final transient HandDesk hand;
    private final transient Desk desk;
    private final Select<Trade> trade = ChangeFields.select("What it does");
    private final TextField name = new TextField("Name of the crew");
    private final TextField base = new TextField("Where it starts from: latitude, longitude");
    private final PeopleField people = new PeopleField();
    private final TroubleLine trouble = new TroubleLine();
    private final Div said = new Div();
    private final Div there = new Div();
    private transient @Nullable DaysFields days;
    private transient @Nullable List<Object> drawn;

    OwnCrewsView(HandDesk hand, Desk desk) {
        this.hand = hand;
        this.desk = desk;
        addClassNames("own", "own-crews");
        there.addClassName("own");
        said.getElement().setAttribute("aria-live", "polite");
        trade.setItems(Trade.values());
        trade.setItemLabelGenerator(one -> one == null ? "" : Words.crewOf(one));
        name.setHelperText("as crews are called, such as window-1");
        base.setHelperText("yard or home; the way from there to the sites counts as work");
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
        shown.folder().crews().forEach(crew -> there.add(new OwnCrewPanel(hand, shown, crew, desk::refresh)));
    }

    private static Div noSite() {
        return Panels.empty(
                "No site yet",
                Panels.text("A crew works by the clock of a site. "),
                new RouterLink("Put in a site first", OwnSitesView.class));
    }

    private void begin(FolderShown shown) {
        removeAll();
        Site first = shown.folder().sites().getFirst();
        base.setValue(PlaceText.of(first.place()));
        var fields = new DaysFields(hand.today(first.zone()));
        days = fields;
        var who = new Div(trade, name, people, base);
        who.addClassName("asked");
        var save = new Button("Save the crew", _ -> save(shown));
        save.addThemeVariants(ButtonVariant.LUMO_PRIMARY);
        Section panel = Panels.panel("crew-form", "A new crew");
        panel.add(
                new Paragraph("Minutes of work are those of a crew of two (see the rules and the crews' pace); "
                        + "a crew sets windows by every method."),
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
                case HandResult.Refused(var why) -> trouble.say(why + ".");
                case HandResult.Saved(var folder) -> {
                    name.clear();
                    people.clear();
                    name.focus();
                    desk.open(folder);
                    saved(draft.name());
                }
            }
        } catch (WrongField wrong) {
            trouble.say(wrong.words());
        }
    }

    private void saved(String crew) {
        said.removeAll();
        said.add(new Paragraph(
                Panels.text("Crew %s is saved. ".formatted(crew), "strong"),
                new RouterLink("Back to the start", StartView.class)));
        draw();
    }
}
