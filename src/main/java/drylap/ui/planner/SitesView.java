package drylap.ui.planner;

import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.details.Details;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.router.Menu;
import com.vaadin.flow.router.QueryParameters;
import com.vaadin.flow.router.Route;
import com.vaadin.flow.router.RouterLink;
import drylap.kernel.FacadeId;
import drylap.kernel.SiteId;
import drylap.security.Operation;
import drylap.security.Person;
import drylap.security.SignedIn;
import drylap.speech.Speech;
import drylap.takeoff.Extent;
import drylap.ui.components.FacadeDrawing;
import drylap.ui.components.OpeningKey;
import drylap.ui.drawn.FolderShown;
import drylap.ui.drawn.SiteForecast;
import drylap.ui.drawn.SitesSheet;
import drylap.ui.drawn.SitesSheet.Face;
import drylap.ui.drawn.SitesSheet.OneSite;
import drylap.ui.drawn.TakeOffChoice;
import drylap.ui.shell.Desk;
import drylap.ui.shell.FolderView;
import drylap.ui.shell.Needs;
import drylap.ui.shell.Spoken;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Every site with its facades: what stands open, what is ready, what came back. */
@Route("sites")
@Needs(Operation.SEE_WALLS)
@Menu(title = "Sites", order = 2.5)
class SitesView extends Div implements FolderView, Spoken {
    /** A big job's walls are drawn once they are opened: thousands of openings at once are slow to send and to read. */
    private static final int DRAWN_AT_ONCE = 300;

    /** What was drawn, so that it is drawn anew only where it changed. */
    private record Drawn(SitesSheet sheet, Map<SiteId, SiteForecast> forecasts) {}

    private final transient SitesDesk desk;
    private final transient ForecastDesk forecasts;
    private final transient Desk table;
    private final transient Person who;
    private final transient Speech say;
    private final Map<FacadeId, Boolean> opened = new HashMap<>();
    private transient @Nullable Drawn drawn;

    SitesView(SitesDesk desk, ForecastDesk forecasts, Desk table, SignedIn signedIn) {
        this.desk = desk;
        this.forecasts = forecasts;
        this.table = table;
        who = signedIn.person();
        say = new Speech(who.reading());
        addClassName("sites-view");
        add(Panels.empty(say));
    }

    @Override
    public String called() {
        return say.it("Sites");
    }

    @Override
    public void show(FolderShown shown) {
        SitesSheet sheet = desk.sheet(who, shown);
        var now = new Drawn(sheet, forecasts.forecasts(say, who, shown));
        if (now.equals(drawn)) return;
        drawn = now;
        removeAll();
        add(new OpeningKey());
        if (who.may(Operation.IMPORT_FOLDER))
            add(new RouterLink(say.it("Openings from a window schedule"), WindowScheduleView.class));
        long walls =
                sheet.sites().stream().mapToLong(site -> site.faces().size()).sum();
        sheet.sites().forEach(site -> add(site(shown, site, now.forecasts().get(site.id()), walls <= DRAWN_AT_ONCE)));
    }

    private Section site(FolderShown shown, OneSite site, @Nullable SiteForecast forecast, boolean open) {
        Section panel = Panels.panel("site", site.name());
        if (!site.address().isEmpty()) panel.add(new Paragraph(site.address()));
        panel.add(new Paragraph("%s; %s.".formatted(site.counts(), site.rain())));
        if (forecast != null) panel.add(new ForecastPanel(forecasts, who, shown, site.id(), forecast, table::refresh));
        var walls = new Div();
        walls.addClassName("faces");
        var takes = TakeOffView.link(
                say.it("Take-off of what is left"), Optional.of(new TakeOffChoice.OfSite(site.id(), Extent.LEFT)));
        takes.getElement().setAttribute("aria-label", say.it("Take-off of what is left: {0}", site.name()));
        if (who.may(Operation.SEE_WEEK_SHEET)) panel.add(takes);
        site.faces().forEach(face -> walls.add(face(face, open)));
        panel.add(walls);
        return panel;
    }

    private Details face(Face face, boolean open) {
        var to = new RouterLink(say.it("To the wall, its laps and its open hours"), WallsView.class);
        to.setQueryParameters(QueryParameters.of("opening", face.first().value()));
        to.getElement()
                .setAttribute(
                        "aria-label",
                        "%s: %s".formatted(to.getText(), face.wall().title()));
        var drawing = new Div();
        var details = new Details("%s: %s".formatted(face.title(), face.counts()), to, drawing);
        details.addOpenedChangeListener(event -> {
            opened.put(face.id(), event.isOpened());
            if (event.isOpened()) draw(drawing, face);
        });
        details.setOpened(opened.getOrDefault(face.id(), open));
        return details;
    }

    private static void draw(Div place, Face face) {
        if (place.getComponentCount() > 0) return;
        var wall = new FacadeDrawing();
        wall.show(face.wall());
        wall.leaveKeyOut();
        wall.onOpeningChosen(opening -> WallsView.open(UI.getCurrent(), opening));
        place.add(wall);
    }
}
