package drylap.ui.planner;

import com.vaadin.flow.component.AttachEvent;
import com.vaadin.flow.component.DetachEvent;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.UIDetachedException;
import com.vaadin.flow.component.dependency.CssImport;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.router.Menu;
import com.vaadin.flow.router.Route;
import com.vaadin.flow.router.RouterLink;
import drylap.planning.PlanId;
import drylap.planning.RunState.Status;
import drylap.risk.OddsState;
import drylap.risk.OddsState.Odds;
import drylap.security.Operation;
import drylap.security.SignedIn;
import drylap.speech.Speech;
import drylap.ui.drawn.FolderShown;
import drylap.ui.drawn.OddsSheet;
import drylap.ui.shell.FolderView;
import drylap.ui.shell.Needs;
import drylap.ui.shell.Spoken;
import java.time.Duration;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** How likely the plan holds: when facades are handed over, what may get wet, what drives both. */
@Route("odds")
@Needs(Operation.SEE_ODDS)
@Menu(title = "Odds", order = 1.5)
@CssImport("./odds.css")
class OddsView extends Div implements FolderView, Spoken {
    private static final Duration LOOK_EVERY = Duration.ofMillis(400);

    private final transient OddsDesk desk;
    private final transient Speech say;
    private final OddsBar bar;
    private final Paragraph which = new Paragraph();
    private final Div odds = new Div();
    private transient @Nullable FolderShown shown;
    private transient @Nullable PlanId plan;
    private transient @Nullable Odds drawn;
    private transient @Nullable Thread looking;

    OddsView(OddsDesk desk, SignedIn signedIn) {
        this.desk = desk;
        say = new Speech(signedIn.reading());
        addClassName("odds-view");
        odds.addClassName("odds");
        bar = new OddsBar(say, this::begin, this::end);
        add(Panels.empty(say));
    }

    @Override
    public String called() {
        return say.it("Odds");
    }

    @Override
    public void show(FolderShown now) {
        shown = now;
        Optional<PlanId> asked = now.choice().shownId();
        removeAll();
        if (asked.isEmpty()) {
            add(noPlan());
            return;
        }
        boolean opened = !asked.get().equals(plan);
        plan = asked.get();
        which.setText(which(now));
        add(which, bar, odds);
        if (opened) beginWhereDue(now, plan);
        look();
    }

    private Div noPlan() {
        var none = new Div(new Paragraph(
                Panels.text(say.it("There is no plan yet whose odds could be reckoned: plan on the") + " "),
                new RouterLink(say.it("week sheet"), WeekSheetView.class),
                Panels.text(".")));
        none.addClassName("empty");
        return none;
    }

    private String which(FolderShown now) {
        boolean published = now.choice().publication() != null
                && now.choice()
                        .shownId()
                        .equals(Optional.of(now.choice().publication().plan()));
        return say.it(
                published
                        ? "Of the published plan. A proposal has odds of its own: the week sheet says which of the two you look at."
                        : "Of a proposal that is not published. The week sheet says which plan you look at.");
    }

    /** Whoever opens the page comes for odds that hold; what somebody stopped or what failed is left to them. */
    private void beginWhereDue(FolderShown now, PlanId asked) {
        if (!desk.mayReckon(now)) return;
        boolean due = desk.state(now, asked)
                .map(state -> state.status() == Status.DONE && !state.holds())
                .orElse(true);
        if (due) desk.begin(now, asked);
    }

    private void begin() {
        if (shown != null && plan != null) desk.begin(shown, plan);
        look();
    }

    private void end() {
        if (shown != null && plan != null) desk.stop(shown, plan);
        look();
    }

    /** Draws how the reckoning stands; as long as it goes on, again soon. */
    private void look() {
        FolderShown now = shown;
        PlanId asked = plan;
        if (now == null || asked == null) return;
        OddsState state = desk.state(now, asked).orElse(null);
        bar.show(state, desk.mayReckon(now));
        Odds found = state == null ? null : state.odds();
        if (found == null) odds.removeAll();
        else if (!found.equals(drawn)) draw(now, found);
        drawn = found;
        if (state != null && !state.status().ended()) lookSoon(asked, state.trials());
    }

    private void draw(FolderShown now, Odds found) {
        OddsSheet sheet = OddsSheet.of(say, now, found);
        var panels = new OddsPanels(say);
        odds.removeAll();
        if (!sheet.changed().isEmpty()) odds.add(panels.old(sheet));
        var reckoned = new Paragraph(sheet.reckoned());
        reckoned.addClassName("hint");
        odds.add(reckoned);
        odds.add(new OddsFigures(say, panels, desk, now, found.report()).panels(sheet));
        odds.add(panels.rests(sheet));
    }

    private void lookSoon(PlanId asked, int trials) {
        UI ui = UI.getCurrent();
        if (looking != null && looking.isAlive()) looking.interrupt();
        looking = Thread.startVirtualThread(() -> {
            try {
                Thread.sleep(LOOK_EVERY);
                ui.access(() -> lookAgain(asked, trials));
            } catch (InterruptedException | UIDetachedException gone) {
                // whoever left does not need it any more
            }
        });
    }

    /** While trials go on, only their number; the job and its report once they have ended. */
    private void lookAgain(PlanId asked, int trials) {
        if (!asked.equals(plan) || !desk.maySee()) return; // whoever looked may have been signed out since
        Optional<Integer> done = desk.underWay(asked);
        done.ifPresentOrElse(
                now -> {
                    bar.done(now, trials);
                    lookSoon(asked, trials);
                },
                this::look);
    }

    @Override
    protected void onAttach(AttachEvent event) {
        look();
    }

    @Override
    protected void onDetach(DetachEvent event) {
        if (looking != null) looking.interrupt();
        looking = null;
    }
}
