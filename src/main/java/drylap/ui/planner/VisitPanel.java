package drylap.ui.planner;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.dialog.Dialog;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.notification.Notification;
import drylap.moving.MoveResult;
import drylap.moving.VisitSeen;
import drylap.moving.VisitTrial;
import drylap.planning.PublishedVisit;
import drylap.planning.Visit;
import drylap.speech.Saying;
import drylap.speech.Speech;
import drylap.ui.drawn.FolderShown;
import drylap.ui.drawn.MoveSheet;
import drylap.ui.drawn.Words;
import org.jspecify.annotations.Nullable;

/** One visit: its facts, its pin, and where it may go, judged before anything is saved. */
final class VisitPanel extends Dialog {
    /** Opens the panel again, on the newest plan and with these values. */
    interface Reopened {
        void at(VisitSeen seen, VisitPlace place);
    }

    private final transient Speech say;
    private final transient VisitDesk desk;
    private final transient FolderShown shown;
    private final transient VisitSeen seen;
    private final transient VisitTrial trial;
    private final transient Reopened reopened;
    private final VerdictPanel verdict;
    private final Button move;
    private final Button newer;
    private final MoveForm form;

    /** @param at where it was dragged to; absent: where it is */
    VisitPanel(
            Speech say,
            VisitDesk desk,
            FolderShown shown,
            VisitSeen seen,
            VisitTrial trial,
            @Nullable VisitPlace at,
            Reopened reopened) {
        this.say = say;
        this.desk = desk;
        this.shown = shown;
        this.seen = seen;
        this.trial = trial;
        this.reopened = reopened;
        verdict = new VerdictPanel(say);
        move = new Button(say.it("Move and pin it there"), _ -> move());
        newer = new Button(say.it("Try it on the newer plan"), _ -> tryNewer());
        Visit visit = trial.visit();
        addClassName("visit-panel");
        setHeaderTitle(say.it("{0} of {1}", Saying.of(Words.task(visit.task())), visit.opening()));
        form = new MoveForm(say, shown, visit.task(), this::judge);
        form.fill(shown, at != null ? at : VisitPlace.of(shown, visit));
        move.addThemeVariants(ButtonVariant.LUMO_PRIMARY);
        newer.setVisible(false);
        add(facts(visit), form, verdict, why());
        getFooter().add(new Button(say.it("Close"), _ -> close()), newer, move);
        judge();
    }

    private Div facts(Visit visit) {
        boolean pinned = pinned(visit);
        var state = new Paragraph(Panels.text(
                say.it(pinned ? "Pinned: later plans keep it here." : "Not pinned: later plans may move it.")));
        state.addClassName("pin-state");
        var pin = new Button(say.it(pinned ? "Unpin" : "Pin here"), _ -> pin(visit, !pinned));
        var wall = WallsView.link(visit.opening());
        wall.setText(say.it("See {0} on its wall", visit.opening()));
        var facts = new Div(
                new Paragraph(MoveSheet.visit(say, shown, visit)),
                new Paragraph(MoveSheet.place(say, shown, visit)),
                wall,
                new Div(state, pin));
        facts.addClassName("facts");
        if (shown.choice().lookAtPublished() && shown.choice().proposal().isPresent())
            facts.add(new Paragraph(say.it("You look at the published plan: a move starts from it, "
                    + "and the present proposal is no longer the newest then.")));
        return facts;
    }

    private BesidePage why() {
        var ask = desk.why(shown, seen);
        return new BesidePage(
                say,
                say.it("Why here, and what a move would cost"),
                () -> ask.get()
                        .<Component>map(sheet -> new WhyPanel(say, sheet))
                        .orElseGet(() -> new Paragraph(say.it("It is done, or no longer in this plan."))));
    }

    private boolean pinned(Visit visit) {
        return shown.folder().published().stream()
                .filter(PublishedVisit::pinned)
                .map(PublishedVisit::visit)
                .anyMatch(one -> one.opening().equals(visit.opening())
                        && one.task() == visit.task()
                        && one.crew().equals(visit.crew())
                        && one.start().equals(visit.start()));
    }

    private void pin(Visit visit, boolean hold) {
        if (hold) desk.pin(seen, visit);
        else if (!desk.unpin(seen, visit)) {
            verdict.say(
                    say.it("The job folder brought this pin along. It holds until a plan of the folder is published."));
            return;
        }
        close();
        Notification.show(say.it(hold ? "Pinned: later plans keep it." : "Unpinned: later plans may move it."));
        desk.refresh();
    }

    private void judge() {
        var place = form.place();
        move.setEnabled(false);
        if (place.isEmpty()) {
            verdict.say(say.it("Choose a crew, a day and a start, and the verdict stands here."));
            return;
        }
        show(MoveSheet.of(say, shown, trial.at(place.get().crew(), place.get().start(shown))));
    }

    private void show(MoveSheet sheet) {
        verdict.show(sheet);
        move.setEnabled(sheet.legal() && !sheet.still());
    }

    private void move() {
        form.place().ifPresent(place -> {
            switch (desk.move(seen, place.crew(), place.start(shown))) {
                case MoveResult.Moved _ -> moved();
                case MoveResult.Refused(var now) -> show(MoveSheet.of(say, shown, now));
                case MoveResult.ChangedMeanwhile _ -> meanwhile();
                case MoveResult.Planning _ ->
                    refused(say.it(
                            "Planning is under way and knows nothing of this move. Stop it, or wait for its plan."));
                case MoveResult.Done _ -> refused(say.it("This task was done meanwhile; there is nothing to move."));
            }
        });
    }

    private void moved() {
        close();
        Notification.show(say.it("Moved and pinned. It is a proposal until someone publishes it."));
        desk.showNewest();
    }

    private void meanwhile() {
        refused(say.it("Meanwhile there is a newer plan than the one that you look at. "
                + "Try the move on the newer one, or close and look first."));
        newer.setVisible(true);
    }

    private void refused(String words) {
        verdict.say("%s %s".formatted(words, say.it("Nothing was saved.")));
        move.setEnabled(false);
    }

    private void tryNewer() {
        var place = form.place();
        close();
        desk.showNewest();
        place.ifPresent(there -> reopened.at(seen, there));
    }
}
