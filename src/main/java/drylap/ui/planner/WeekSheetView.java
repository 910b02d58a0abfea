package drylap.ui.planner;

import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.router.Menu;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import drylap.planning.Plan;
import drylap.security.Operation;
import drylap.ui.components.WeekSheet;
import drylap.ui.drawn.CoverNowList;
import drylap.ui.drawn.FolderShown;
import drylap.ui.drawn.LedgerSheet;
import drylap.ui.drawn.NotPlanned;
import drylap.ui.drawn.Run;
import drylap.ui.drawn.WeekPresenter;
import drylap.ui.shell.Desk;
import drylap.ui.shell.FolderView;
import drylap.ui.shell.Needs;

/** The scheduler's first screen: what must be covered now, who goes where, what is left out, what it costs. */
@Route("week-sheet")
@Needs(Operation.SEE_WEEK_SHEET)
@PageTitle("Week sheet · Drylap")
@Menu(title = "Week sheet", order = 1)
class WeekSheetView extends Div implements FolderView {
    private final CoverNowPanel cover = new CoverNowPanel();
    private final PlanBar bar;
    private final PublishPanel publish;
    private final BrokenPanel broken;
    private final BookedPanel booked;
    private final WeekSheet sheet = new WeekSheet();
    private final Div foot = new Div();
    private final Div empty = Panels.empty();

    WeekSheetView(Desk desk, BrokenPanel broken, BookedPanel booked) {
        this.broken = broken;
        this.booked = booked;
        bar = new PlanBar(desk);
        publish = new PublishPanel(desk);
        addClassName("week-view");
        foot.addClassName("foot");
        add(empty);
        sheet.onOpeningChosen(opening -> WallsView.open(UI.getCurrent(), opening));
    }

    @Override
    public void show(FolderShown shown) {
        if (empty.getParent().isPresent()) {
            remove(empty);
            add(cover, bar, publish, broken, sheet, booked, foot);
        }
        publish.show(shown);
        broken.show(shown);
        booked.show(shown);
        cover.show(CoverNowList.of(shown));
        sheet.show(WeekPresenter.week(shown));
        foot.removeAll();
        foot.add(new NotPlannedPanel(NotPlanned.of(shown), shown.plan().isPresent()));
        shown.plan()
                .map(Plan::ledger)
                .map(LedgerSheet::of)
                .map(LedgerPanel::new)
                .ifPresent(foot::add);
    }

    @Override
    public void show(Run run) {
        bar.show(run);
    }
}
