package drylap.ui.planner;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.checkbox.Checkbox;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.html.UnorderedList;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.router.Menu;
import com.vaadin.flow.router.Route;
import drylap.handoff.HoldPoint;
import drylap.handoff.HoldPoints;
import drylap.kernel.FolderId;
import drylap.kernel.SiteId;
import drylap.planning.ChangedRules;
import drylap.progress.PhotoPlaces;
import drylap.security.Operation;
import drylap.security.Person;
import drylap.security.SignedIn;
import drylap.sites.Site;
import drylap.speech.Speech;
import drylap.ui.drawn.FolderShown;
import drylap.ui.drawn.RuleSheet;
import drylap.ui.shell.Desk;
import drylap.ui.shell.FolderView;
import drylap.ui.shell.Needs;
import drylap.ui.shell.Spoken;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** The numbers of the trade that hold at a site or everywhere, each with its source. */
@Route("rules")
@Needs(Operation.SEE_RULES)
@Menu(title = "Rules", order = 6)
class RulesView extends Div implements FolderView, Spoken {
    /** A site to choose, or everywhere. */
    private record Place(Optional<SiteId> site, String name) {}

    private final transient ChangedRules rules;
    private final transient HoldPoints holdPoints;
    private final transient PhotoPlaces photoPlaces;
    private final transient Person who;
    private final transient Desk desk;
    private final transient Speech say;
    private final Select<Place> places = new Select<>();
    private final Div body = new Div();
    private @Nullable FolderShown shown;

    RulesView(ChangedRules rules, HoldPoints holdPoints, PhotoPlaces photoPlaces, SignedIn signedIn, Desk desk) {
        this.rules = rules;
        this.holdPoints = holdPoints;
        this.photoPlaces = photoPlaces;
        this.who = signedIn.person();
        this.desk = desk;
        say = new Speech(who.reading());
        addClassName("rules-view");
        places.setLabel(say.it("Rules of"));
        places.addClassName("place");
        places.setItemLabelGenerator(Place::name);
        places.addValueChangeListener(event -> {
            if (event.isFromClient()) draw();
        });
        add(Panels.empty(say));
    }

    @Override
    public String called() {
        return say.it("Rules");
    }

    @Override
    public void show(FolderShown now) {
        shown = now;
        removeAll();
        add(places, body);
        Place before = places.getValue();
        List<Place> all = new ArrayList<>(List.of(new Place(Optional.empty(), say.it("every site"))));
        now.folder().sites().forEach(site -> all.add(new Place(Optional.of(site.id()), site.name())));
        places.setItems(all);
        places.setValue(all.contains(before) ? before : all.getFirst());
        draw();
    }

    private void draw() {
        body.removeAll();
        if (shown == null || places.isEmpty()) return;
        var folder = shown.stored().id();
        SiteId site = places.getValue().site().orElse(null);
        if (site != null) body.add(holdPoints(folder, site), photos(folder, site));
        Section panel =
                Panels.panel("rules", say.it("Rules of {0}", places.getValue().name()));
        var hint = new Paragraph(say.it("Defaults are a beginning: the maker's data sheet and local codes come first. "
                + "A change counts from the next plan on."));
        var list = new UnorderedList();
        list.addClassName("rules");
        RuleSheet.of(say, facts(folder, shown), site).lines().forEach(line -> list.add(item(folder, site, line)));
        panel.add(hint, list);
        body.add(panel);
    }

    private RuleSheet.Facts facts(FolderId folder, FolderShown now) {
        return new RuleSheet.Facts(
                rules.of(who, folder),
                rules.imported(who, folder),
                rules.newest(who, folder),
                now.folder().sites().stream().map(Site::zone).findFirst().orElseThrow());
    }

    private ListItem item(FolderId folder, @Nullable SiteId site, RuleSheet.Line line) {
        var change =
                new Button(say.it("Change"), _ -> dialog(folder, site, line).open());
        change.setAriaLabel(say.it("Change: {0}", line.name()));
        change.setVisible(mayChange(site));
        var value = Panels.text(line.value(), "strong", "value");
        var said = new Div(Panels.text(line.name()), value, Panels.text(line.effect(), "source"));
        said.addClassName("said");
        var from = new Div(
                Panels.text(line.from(), "from"),
                Panels.text(say.it("{0} accepted; {1}", line.bounds(), line.standard()), "source"));
        from.addClassName("whence");
        return new ListItem(said, from, change);
    }

    private RuleDialog dialog(FolderId folder, @Nullable SiteId site, RuleSheet.Line line) {
        return new RuleDialog(rules, who, folder, site, line, desk::refresh);
    }

    private boolean mayChange(@Nullable SiteId site) {
        return site == null
                ? who.may(Operation.CHANGE_RULES) && who.reach().everySite()
                : who.may(Operation.CHANGE_RULES, site);
    }

    private Section holdPoints(FolderId folder, SiteId site) {
        Section panel = Panels.panel("hold-points", say.it("Hold points"));
        panel.add(new Paragraph(say.it("Beyond these nobody goes on at this site until someone has looked.")));
        var applying = holdPoints.at(folder, site);
        for (HoldPoint point : HoldPoint.values()) {
            var box = new Checkbox(say.it(point.words()), applying.contains(point));
            box.setEnabled(mayChange(site));
            box.addValueChangeListener(event -> {
                if (event.isFromClient()) holdPoints.apply(who, folder, site, point, event.getValue());
            });
            panel.add(box);
        }
        return panel;
    }

    private Section photos(FolderId folder, SiteId site) {
        Section panel = Panels.panel("photo-places", say.it("Photos"));
        panel.add(new Paragraph(say.it(
                "What a camera writes into a photo, such as the place and its own number, is taken out before the photo "
                        + "is kept. Photos taken on the page of the steps never have it.")));
        var box = new Checkbox(say.it("Keep it in photos added from now on"), photoPlaces.keptAt(folder, site));
        box.setEnabled(mayChange(site));
        box.addValueChangeListener(event -> {
            if (event.isFromClient()) photoPlaces.keep(who, folder, site, event.getValue());
        });
        panel.add(box);
        return panel;
    }
}
