package drylap.ui.planner;

import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.BeforeEnterObserver;
import com.vaadin.flow.router.Menu;
import com.vaadin.flow.router.Route;
import drylap.kernel.Coded;
import drylap.kernel.OpeningId;
import drylap.kernel.Task;
import drylap.moving.VisitSeen;
import drylap.planning.Plan;
import drylap.planning.TaskWords;
import drylap.security.Operation;
import drylap.security.SignedIn;
import drylap.speech.Speech;
import drylap.ui.components.SpreadsheetLink;
import drylap.ui.components.WeekSheet;
import drylap.ui.drawn.CoverNowList;
import drylap.ui.drawn.FolderShown;
import drylap.ui.drawn.LedgerSheet;
import drylap.ui.drawn.NotPlanned;
import drylap.ui.drawn.Run;
import drylap.ui.drawn.WeekChoice;
import drylap.ui.shell.Desk;
import drylap.ui.shell.FolderView;
import drylap.ui.shell.Needs;
import drylap.ui.shell.PaperLinks;
import drylap.ui.shell.Spoken;
import drylap.ui.shell.Unchanged;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** The scheduler's first screen: what must be covered now, who goes where, what is left out, what it costs. */
@Route(WeekSheetView.PATH)
@Needs(Operation.SEE_WEEK_SHEET)
@Menu(title = "Week sheet", order = 1)
class WeekSheetView extends Div implements FolderView, BeforeEnterObserver, Spoken {
    static final String PATH = "week-sheet";

    private final VisitDesk visits;
    private final transient Speech say;
    private final WeekFilter filter;
    private final CoverNowPanel cover;
    private final PlanBar bar;
    private final PublishPanel publish;
    private final PlannedWithPanel plannedWith;
    private final BrokenPanel broken;
    private final BookedPanel booked;
    private final PapersPanel papers;
    private final Div onPaper = new Div();
    private final WeekSheet sheet = new WeekSheet();
    private final Div foot = new Div();
    private final Div empty;
    private final transient Unchanged belowIsDrawn = new Unchanged();
    private final transient Unchanged linksAreDrawn = new Unchanged();
    private @Nullable FolderShown shown;

    WeekSheetView(
            Desk desk,
            PlannedWithPanel plannedWith,
            BrokenPanel broken,
            BookedPanel booked,
            PapersPanel papers,
            VisitDesk visits,
            SignedIn signedIn) {
        say = new Speech(signedIn.reading());
        cover = new CoverNowPanel(say);
        empty = Panels.empty(say);
        this.papers = papers;
        this.plannedWith = plannedWith;
        this.broken = broken;
        this.booked = booked;
        this.visits = visits;
        filter = new WeekFilter(say, visits, () -> {
            if (shown != null) lay(shown);
        });
        new VisitOpener(say, this, sheet, visits, () -> shown);
        bar = new PlanBar(say, desk);
        publish = new PublishPanel(say, desk);
        addClassName("week-view");
        foot.addClassName("foot");
        onPaper.addClassName("taken-along");
        add(empty);
        sheet.onOpeningChosen(opening -> WallsView.open(UI.getCurrent(), opening));
    }

    @Override
    public String called() {
        return say.it("Week sheet");
    }

    @Override
    public void beforeEnter(BeforeEnterEvent event) {
        var asked = WeekChoice.of(event.getLocation().getQueryParameters().getParameters());
        if (!asked.all()) visits.choose(asked);
    }

    @Override
    public void show(FolderShown shown) {
        this.shown = shown;
        if (empty.getParent().isPresent()) {
            remove(empty);
            add(cover, bar, publish, plannedWith, broken, filter, onPaper, sheet, papers, booked, foot);
        }
        publish.show(shown);
        plannedWith.show(shown);
        broken.show(shown);
        booked.show(shown);
        papers.show(shown);
        cover.show(shown.name(), CoverNowList.of(say, shown));
        lay(shown);
        foot(
                shown,
                NotPlanned.of(say, shown),
                shown.plan().map(Plan::ledger).map(ledger -> LedgerSheet.of(say, ledger)));
    }

    private void foot(FolderShown shown, NotPlanned left, Optional<LedgerSheet> ledger) {
        if (belowIsDrawn.since(List.of(shown.stored(), shown.choice(), left, ledger))) return;
        foot.removeAll();
        // asked once: of a large job thousands of rows may be left out
        var remedies = visits.remedies();
        foot.add(new NotPlannedPanel(
                say,
                shown.name(),
                left,
                shown.plan().isPresent(),
                row -> remedies.flatMap(ask -> remedy(shown, row, ask))));
        ledger.map(sheet -> new LedgerPanel(say, shown.name(), sheet)).ifPresent(foot::add);
    }

    private Optional<BesidePage> remedy(
            FolderShown shown, NotPlanned.Row row, Function<VisitSeen, Optional<String>> ask) {
        Task task = Coded.of(Task.class, row.taskCode());
        var opening = new OpeningId(row.opening());
        return visits.seen(shown, opening, task)
                .map(seen -> new BesidePage(
                        say,
                        say.it("Find out"),
                        say.it("Find out what would plan the {0}", TaskWords.at(task, opening)),
                        () -> new Paragraph(
                                ask.apply(seen).orElseGet(() -> say.it("It is planned by now, or done.")))));
    }

    private void lay(FolderShown shown) {
        filter.show(shown);
        sheet.show(shown.week(say, visits.choice()));
        var choice = visits.choice();
        boolean published = shown.choice().lookAtPublished();
        if (linksAreDrawn.since(List.of(shown.stored(), published, choice))) return;
        onPaper.removeAll();
        onPaper.add(
                PaperLinks.week(say, shown.stored().id(), published, choice),
                new SpreadsheetLink(
                        say,
                        shown.name(),
                        say.it("Visits"),
                        () -> VisitTable.of(say, Objects.requireNonNull(this.shown), choice)),
                TakeOffView.link(say.it("Take-off of a day"), Optional.empty()));
    }

    @Override
    public void show(Run run) {
        bar.show(run);
    }
}
