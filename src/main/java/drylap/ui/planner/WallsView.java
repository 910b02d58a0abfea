package drylap.ui.planner;

import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.dependency.CssImport;
import com.vaadin.flow.component.html.Anchor;
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
import drylap.kernel.OpeningId;
import drylap.platform.News;
import drylap.roughopening.RoughOpenings;
import drylap.security.Operation;
import drylap.security.SignedIn;
import drylap.sites.Facade;
import drylap.sites.Opening;
import drylap.sites.ScheduledOpenings;
import drylap.speech.Speech;
import drylap.ui.components.FacadeDrawing;
import drylap.ui.components.ForecastStrip;
import drylap.ui.components.LapDrawing;
import drylap.ui.components.SpreadsheetLink;
import drylap.ui.drawn.FolderShown;
import drylap.ui.drawn.OpeningPresenter;
import drylap.ui.drawn.OpeningSheet;
import drylap.ui.drawn.RoughAddress;
import drylap.ui.drawn.RoughSheet;
import drylap.ui.drawn.ScheduleWords;
import drylap.ui.drawn.StripPresenter;
import drylap.ui.drawn.WallPresenter;
import drylap.ui.drawn.Words;
import drylap.ui.shell.FolderView;
import drylap.ui.shell.Live;
import drylap.ui.shell.Needs;
import drylap.ui.shell.Spoken;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** One facade as it stands, and beside it the laps of the opening that was pointed at. */
@Route("walls")
@Needs(Operation.SEE_WALLS)
@Menu(title = "Walls", order = 2)
@CssImport("./rough-opening.css")
class WallsView extends Div implements FolderView, BeforeEnterObserver, Spoken {
    private static final String OPENING = "opening";

    private final Select<Facade> facades = new Select<>();
    private final transient Offered<Facade> choices = new Offered<>(facades);
    private final FacadeDrawing drawing = new FacadeDrawing();
    private final ForecastStrip strip = new ForecastStrip();
    private final Div hours = new Div();
    private final LapDrawing section = new LapDrawing();
    private final Div laps = new Div();
    private final HandoverPanel handover;
    private final transient ScheduledOpenings scheduled;
    private final transient RoughOpenings rough;
    private final transient SignedIn signedIn;
    private final transient Speech say;
    private @Nullable FolderShown shown;
    private @Nullable OpeningId chosen;

    WallsView(HandoverDesk desk, ScheduledOpenings scheduled, RoughOpenings rough, SignedIn signedIn, News news) {
        this.scheduled = scheduled;
        this.rough = rough;
        this.signedIn = signedIn;
        say = new Speech(signedIn.reading());
        handover = new HandoverPanel(desk, signedIn);
        Live.follow(this, news, HandoverPanel.TOPICS, handover::refresh);
        addClassName("walls-view");
        laps.addClassName("laps");
        hours.addClassName("hours");
        facades.setLabel(say.it("Facade"));
        facades.addValueChangeListener(event -> {
            if (event.isFromClient() && event.getValue() != null) showFacade(event.getValue());
        });
        drawing.onOpeningChosen(this::choose);
        add(Panels.empty(say));
    }

    @Override
    public String called() {
        return say.it("Walls");
    }

    static RouterLink link(OpeningId opening) {
        var link = new RouterLink(opening.value(), WallsView.class);
        link.setQueryParameters(QueryParameters.of(OPENING, opening.value()));
        return link;
    }

    static void open(UI ui, OpeningId opening) {
        ui.navigate(WallsView.class, QueryParameters.of(OPENING, opening.value()));
    }

    @Override
    public void beforeEnter(BeforeEnterEvent event) {
        chosen = event.getLocation()
                .getQueryParameters()
                .getSingleParameter(OPENING)
                .filter(id -> !id.isBlank())
                .map(OpeningId::new)
                .orElse(null);
        if (shown != null) show(shown);
    }

    @Override
    public void show(FolderShown now) {
        shown = now;
        if (now.folder().openings().isEmpty()) {
            removeAll();
            add(Panels.noOpening(say));
            return;
        }
        if (section.getParent().isEmpty()) lay();
        List<Facade> walls = now.folder().facades();
        Facade before = facades.getValue();
        choices.show(walls, facade -> "%s (%s)".formatted(now.title(facade.id()), say.it(Words.heading(facade))));
        Opening opening = now.folder().openings().stream()
                .filter(one -> one.id().equals(chosen))
                .findFirst()
                .orElseGet(() -> firstToSee(now, before));
        Facade wall = now.facade(opening.facade());
        facades.setValue(wall);
        draw(wall);
        choose(opening.id());
    }

    private void lay() {
        removeAll();
        var wall = new Div(facades, drawing);
        wall.addClassName("wall");
        strip.hint(say.it(ForecastStrip.HINT));
        add(wall, section, laps, hours);
    }

    /** One that stands open, where there is one: that is what people come to see. */
    private static Opening firstToSee(FolderShown now, @Nullable Facade wall) {
        List<Opening> all = now.folder().openings().stream()
                .filter(one -> wall == null || one.facade().equals(wall.id()))
                .toList();
        List<Opening> some = all.isEmpty() ? now.folder().openings() : all;
        return some.stream()
                .filter(one -> one.stepList().open(one.done()))
                .findFirst()
                .orElse(some.getFirst());
    }

    private void showFacade(Facade facade) {
        if (shown == null) return;
        draw(facade);
        choose(firstToSee(shown, facade).id());
    }

    private void draw(Facade facade) {
        if (shown == null) return;
        drawing.show(WallPresenter.wall(say, shown, facade.id()));
        strip.show(StripPresenter.strip(say, shown, facade.id()));
        hours.removeAll();
        hours.add(strip, spreadsheet(shown, facade));
    }

    private SpreadsheetLink spreadsheet(FolderShown now, Facade facade) {
        String wall = now.title(facade.id());
        return new SpreadsheetLink(say, wall, HoursTable.called(say, wall), () -> HoursTable.of(say, now, facade.id()));
    }

    private Section note(String words) {
        Section panel = Panels.panel("schedule-note", say.it("From the window schedule"));
        panel.add(new Paragraph(words));
        return panel;
    }

    private Section measured(FolderShown now, OpeningId opening) {
        Section panel = Panels.panel("rough-panel", say.it("Rough opening as measured"));
        rough.newest(signedIn.person(), now.stored().id(), opening)
                .map(one -> RoughSheet.of(
                        say, one, now.site(now.opening(opening).facade().site()).zone()))
                .ifPresentOrElse(
                        sheet -> panel.add(new RoughVerdictPanel(say, sheet)),
                        () -> panel.add(new Paragraph(say.it("It was not measured yet."))));
        panel.add(new Anchor(
                RoughAddress.of(now.stored().id(), opening.value()), say.it("Measure it, and earlier measurements")));
        return panel;
    }

    private void choose(OpeningId opening) {
        if (shown == null) return;
        chosen = opening;
        drawing.choose(opening);
        laps.removeAll();
        OpeningSheet sheet = OpeningPresenter.sheet(say, shown, opening);
        section.show(sheet.section(), sheet.tallSection(), sheet.sectionCaption());
        handover.show(shown.stored().id(), opening);
        laps.add(handover, new LapsPanel(say, sheet));
        scheduled
                .note(shown.stored().id(), opening, signedIn.person().reach())
                .map(note -> ScheduleWords.note(say, note))
                .ifPresent(note -> laps.add(note(note)));
        laps.add(measured(shown, opening));
    }
}
