package drylap.ui.planner;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.checkbox.CheckboxGroup;
import com.vaadin.flow.component.dependency.CssImport;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.BeforeEnterObserver;
import com.vaadin.flow.router.Route;
import com.vaadin.flow.router.RouterLink;
import drylap.planning.HandResult;
import drylap.planning.WallDraft;
import drylap.security.Operation;
import drylap.security.SignedIn;
import drylap.sites.Compass;
import drylap.sites.Site;
import drylap.speech.Speech;
import drylap.ui.drawn.FolderShown;
import drylap.ui.shell.Desk;
import drylap.ui.shell.FolderView;
import drylap.ui.shell.Needs;
import drylap.ui.shell.Spoken;
import drylap.ui.shell.TroubleLine;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Sites of one's own and their walls, put in by hand. */
@Route("own-sites")
@Needs(Operation.IMPORT_FOLDER)
@CssImport("./start.css")
class OwnSitesView extends Div implements FolderView, BeforeEnterObserver, Spoken {
    private final transient HandDesk hand;
    private final transient Desk desk;
    private final transient Speech say;
    private final PlaceFields place;
    private final CheckboxGroup<Compass> walls = new CheckboxGroup<>();
    private final TroubleLine trouble = new TroubleLine();
    private final Div there = new Div();
    private final Div said = new Div();
    private transient @Nullable List<Object> drawn;

    OwnSitesView(HandDesk hand, Desk desk, SignedIn signedIn) {
        this.hand = hand;
        this.desk = desk;
        say = new Speech(signedIn.person().reading());
        place = new PlaceFields(say);
        walls.setLabel(say.it("Walls with windows face"));
        addClassNames("own", "own-sites");
        there.addClassName("own");
        said.getElement().setAttribute("aria-live", "polite");
        walls.setItems(Compass.values());
        walls.setItemLabelGenerator(this::called);
        walls.setHelperText(
                say.it(
                        "as seen from the middle of the building; other names and degrees can be put in below, once the site is saved"));
        var save = new Button(say.it("Save the site"), _ -> save());
        save.addThemeVariants(ButtonVariant.LUMO_PRIMARY);
        Section panel = Panels.panel("site-form", say.it("A new site"));
        panel.add(place, walls, trouble, save);
        add(said, panel, there);
    }

    @Override
    public String called() {
        return say.it("Own sites");
    }

    private String called(Compass direction) {
        return say.it(direction.words());
    }

    @Override
    public void beforeEnter(BeforeEnterEvent event) {
        draw();
        place.focus();
    }

    @Override
    public void show(FolderShown shown) {
        draw();
    }

    private void save() {
        try {
            trouble.clear();
            var site = place.read();
            List<WallDraft> facing = walls.getValue().stream()
                    .sorted()
                    .map(one -> new WallDraft(called(one), one.azimuthDeg()))
                    .toList();
            var folder = desk.own().map(own -> own.stored().id()).orElse(null);
            switch (hand.add(folder, site, facing)) {
                case HandResult.Refused(var why) -> trouble.say(say.it(why) + ".");
                case HandResult.Saved(var id) -> {
                    walls.clear();
                    desk.open(id);
                    saved(site.name());
                }
            }
        } catch (WrongField wrong) {
            trouble.say(say.it(wrong.said()));
        }
    }

    private void saved(String name) {
        said.removeAll();
        said.add(new Paragraph(
                Panels.text(say.it("{0} is saved.", name) + " ", "strong"),
                new RouterLink(say.it("Next: its openings"), WindowScheduleView.class),
                Panels.text(" · "),
                new RouterLink(say.it("Back to the start"), StartView.class)));
        draw();
    }

    /** What somebody types stays, unless what is stored changed. */
    private void draw() {
        Optional<FolderShown> own = desk.own();
        List<Object> now = own.<List<Object>>map(
                        shown -> List.of(shown.folder().sites(), shown.folder().facades()))
                .orElse(List.of());
        if (now.equals(drawn)) return;
        drawn = now;
        there.removeAll();
        own.ifPresent(shown -> shown.folder()
                .sites()
                .forEach(site -> there.add(new OwnSitePanel(hand, say, shown, site, desk::refresh))));
    }

    /** For whoever comes from a site. */
    static String title(Site site) {
        return "%s (%s)".formatted(site.name(), site.id());
    }
}
