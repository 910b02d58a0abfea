package drylap.ui.planner;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H3;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.html.UnorderedList;
import com.vaadin.flow.router.Menu;
import com.vaadin.flow.router.Route;
import drylap.security.Operation;
import drylap.security.Person;
import drylap.security.SignedIn;
import drylap.sites.Facade;
import drylap.sites.Site;
import drylap.speech.Speech;
import drylap.ui.components.ForecastStrip;
import drylap.ui.components.SpreadsheetLink;
import drylap.ui.drawn.FolderShown;
import drylap.ui.drawn.SiteForecast;
import drylap.ui.drawn.StripPresenter;
import drylap.ui.drawn.Words;
import drylap.ui.shell.FolderView;
import drylap.ui.shell.Needs;
import drylap.ui.shell.Spoken;
import org.jspecify.annotations.Nullable;

/** When the weather and the light leave each facade open, task by task. */
@Route("open-hours")
@Needs(Operation.SEE_OPEN_HOURS)
@Menu(title = "Open hours", order = 3)
class OpenHoursView extends Div implements FolderView, Spoken {
    private final transient ForecastDesk forecasts;
    private final transient Person who;
    private final transient Speech say;

    OpenHoursView(ForecastDesk forecasts, SignedIn signedIn) {
        this.forecasts = forecasts;
        who = signedIn.person();
        say = new Speech(who.reading());
        addClassName("hours-view");
        add(Panels.empty(say));
    }

    @Override
    public String called() {
        return say.it("Open hours");
    }

    @Override
    public void show(FolderShown shown) {
        removeAll();
        var hint = new Paragraph(say.it(ForecastStrip.HINT));
        hint.addClassName("hint");
        var key = new UnorderedList(
                ForecastStrip.key(say).stream().map(ListItem::new).toArray(ListItem[]::new));
        key.addClassName("strip-key");
        add(hint, key);
        var told = forecasts.forecasts(say, who, shown);
        shown.folder().sites().forEach(site -> add(site(shown, site, told.get(site.id()))));
    }

    private Section site(FolderShown shown, Site site, @Nullable SiteForecast forecast) {
        Section panel = Panels.panel("site", site.name());
        if (forecast != null) panel.add(new Paragraph(forecast.planned()));
        panel.add(new ExposurePanel(say, site.name(), forecasts.exposure(say, who, shown, site.id())));
        shown.folder().facades().stream()
                .filter(facade -> facade.id().site().equals(site.id()))
                .forEach(facade -> panel.add(heading(facade), strip(shown, facade), spreadsheet(shown, facade)));
        return panel;
    }

    private H3 heading(Facade facade) {
        var heading = new H3(facade.id().facade());
        heading.add(new Span(" " + say.it(Words.heading(facade))));
        return heading;
    }

    private SpreadsheetLink spreadsheet(FolderShown shown, Facade facade) {
        String wall = shown.title(facade.id());
        return new SpreadsheetLink(
                say, wall, HoursTable.called(say, wall), () -> HoursTable.of(say, shown, facade.id()));
    }

    private ForecastStrip strip(FolderShown shown, Facade facade) {
        var strip = new ForecastStrip();
        strip.show(StripPresenter.strip(say, shown, facade.id()));
        return strip;
    }
}
