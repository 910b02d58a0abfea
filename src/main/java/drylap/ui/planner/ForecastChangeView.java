package drylap.ui.planner;

import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.BeforeEnterObserver;
import com.vaadin.flow.router.Menu;
import com.vaadin.flow.router.QueryParameters;
import com.vaadin.flow.router.Route;
import com.vaadin.flow.router.RouterLink;
import drylap.kernel.SiteId;
import drylap.security.Operation;
import drylap.security.Person;
import drylap.security.SignedIn;
import drylap.sites.Site;
import drylap.speech.Speech;
import drylap.ui.drawn.FolderShown;
import drylap.ui.drawn.ForecastChange;
import drylap.ui.drawn.ForecastName;
import drylap.ui.shell.Desk;
import drylap.ui.shell.FolderView;
import drylap.ui.shell.Needs;
import drylap.ui.shell.Spoken;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What another forecast of a site opened and shut, and which published visits it breaks. */
@Route("forecast-change")
@Needs({Operation.SEE_OPEN_HOURS, Operation.SEE_WEEK_SHEET})
@Menu(title = "Forecast change", order = 3.1)
class ForecastChangeView extends Div implements FolderView, Spoken, BeforeEnterObserver {
    private static final String SITE = "site";

    private final transient ForecastChangeDesk changes;
    private final transient Desk desk;
    private final transient Person who;
    private final transient Speech say;
    private final Select<Site> sites = new Select<>();
    private final Select<ForecastName> earlier = new Select<>();
    private final Select<ForecastName> later = new Select<>();
    private final Div result = new Div();
    private transient @Nullable FolderShown shown;
    private transient @Nullable SiteId asked;

    ForecastChangeView(ForecastChangeDesk changes, Desk desk, SignedIn signedIn) {
        this.changes = changes;
        this.desk = desk;
        who = signedIn.person();
        say = new Speech(who.reading());
        addClassName("forecast-change");
        sites.setLabel(say.it("Site"));
        sites.setItemLabelGenerator(Site::name);
        earlier.setLabel(say.it("Earlier forecast"));
        earlier.setItemLabelGenerator(ForecastName::words);
        later.setLabel(say.it("Later forecast"));
        later.setItemLabelGenerator(ForecastName::words);
        result.getElement().setAttribute("aria-live", "polite");
        result.addClassName("result");
        sites.addValueChangeListener(event -> {
            if (event.isFromClient() && event.getValue() != null) choose(event.getValue());
        });
        earlier.addValueChangeListener(event -> {
            if (event.isFromClient()) compare();
        });
        later.addValueChangeListener(event -> {
            if (event.isFromClient()) compare();
        });
        add(Panels.empty(say));
    }

    @Override
    public String called() {
        return say.it("Forecast change");
    }

    static RouterLink link(SiteId site, String words) {
        var link = new RouterLink(words, ForecastChangeView.class);
        link.setQueryParameters(QueryParameters.of(SITE, site.value()));
        return link;
    }

    @Override
    public void beforeEnter(BeforeEnterEvent event) {
        asked = event.getLocation()
                .getQueryParameters()
                .getSingleParameter(SITE)
                .filter(id -> !id.isBlank())
                .map(SiteId::new)
                .orElse(null);
        if (shown != null) show(shown);
    }

    @Override
    public void show(FolderShown now) {
        shown = now;
        removeAll();
        var choice = new Div(sites, earlier, later);
        choice.addClassName("choice");
        add(choice, result);
        List<Site> all = now.folder().sites();
        Site before = sites.getValue();
        sites.setItems(all);
        Site site = all.stream()
                .filter(one -> asked == null ? one.equals(before) : one.id().equals(asked))
                .findFirst()
                .orElseGet(all::getFirst);
        sites.setValue(site);
        choose(site);
    }

    private void choose(Site site) {
        FolderShown now = shown;
        if (now == null) return;
        asked = site.id();
        List<ForecastName> known = changes.known(say, who, now, site);
        earlier.setItems(known);
        later.setItems(known);
        changes.earlier(who, now, site, known).ifPresent(earlier::setValue);
        changes.later(now, site, known).ifPresent(later::setValue);
        compare();
    }

    private void compare() {
        result.removeAll();
        FolderShown now = shown;
        Site site = sites.getValue();
        if (now == null || site == null) return;
        ForecastName first = earlier.getValue();
        ForecastName second = later.getValue();
        if (first == null || second == null)
            tell(say.it("No forecast of {0} is known: all of its hours count as open.", site.name()));
        else if (first.equals(second))
            tell(say.it(
                    "This is one and the same forecast. Choose another to see what changed; "
                            + "the next one that comes for {0} can be chosen here.",
                    site.name()));
        else draw(now, changes.change(say, who, now, site, first, second));
    }

    private void tell(String words) {
        result.add(new Paragraph(words));
    }

    private void draw(FolderShown now, ForecastChange change) {
        change.notes().forEach(this::tell);
        var panels = new ForecastChangePanels(say, now.name());
        result.add(breaks(now, panels, change), panels.walls(change));
        if (!change.mends().isEmpty()) result.add(panels.mends(change));
    }

    private Section breaks(FolderShown now, ForecastChangePanels panels, ForecastChange change) {
        Section panel = panels.breaks(change, now.choice().published() != null);
        var ways = new Div();
        ways.addClassName("ways");
        if (!change.breaks().isEmpty() && changes.mayPlan(who, now)) {
            var plan = new Button(say.it("Plan again"), _ -> {
                desk.plan(Desk.FIRST_PLAN_SECONDS);
                UI.getCurrent().navigate(WeekSheetView.class);
            });
            plan.addThemeVariants(ButtonVariant.LUMO_PRIMARY);
            ways.add(plan);
        }
        ways.add(new RouterLink(say.it("To the week sheet"), WeekSheetView.class));
        panel.add(ways);
        return panel;
    }
}
