package drylap.ui.planner;

import com.vaadin.flow.spring.annotation.SpringComponent;
import com.vaadin.flow.spring.annotation.UIScope;
import drylap.kernel.CrewId;
import drylap.kernel.OpeningId;
import drylap.kernel.Task;
import drylap.moving.MoveResult;
import drylap.moving.VisitMoves;
import drylap.moving.VisitReasons;
import drylap.moving.VisitSeen;
import drylap.moving.VisitTrial;
import drylap.planning.Pins;
import drylap.planning.PlanId;
import drylap.planning.Visit;
import drylap.security.Operation;
import drylap.security.Person;
import drylap.security.SignedIn;
import drylap.speech.Speech;
import drylap.ui.drawn.FolderShown;
import drylap.ui.drawn.PlanChoice;
import drylap.ui.drawn.WeekChoice;
import drylap.ui.drawn.WhySheet;
import drylap.ui.shell.Desk;
import java.time.Instant;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;

/** What a scheduler does to single visits, and what of the sheet they want to see, as long as the page is open. */
@UIScope
@SpringComponent
class VisitDesk {
    private final VisitMoves moves;
    private final Pins pins;
    private final VisitReasons reasons;
    private final SignedIn signedIn;
    private final Desk desk;
    private WeekChoice choice = WeekChoice.ALL;

    VisitDesk(VisitMoves moves, Pins pins, VisitReasons reasons, SignedIn signedIn, Desk desk) {
        this.moves = moves;
        this.pins = pins;
        this.reasons = reasons;
        this.signedIn = signedIn;
        this.desk = desk;
    }

    WeekChoice choice() {
        return choice;
    }

    void choose(WeekChoice now) {
        choice = now;
    }

    /** The visit in the plan that is looked at; nothing where there is no plan. */
    Optional<VisitSeen> seen(FolderShown shown, OpeningId opening, Task task) {
        return lookedAt(shown.choice())
                .map(plan -> new VisitSeen(
                        shown.stored().id(),
                        Objects.requireNonNull(shown.choice().newest()).id(),
                        plan,
                        opening,
                        task));
    }

    private static Optional<PlanId> lookedAt(PlanChoice choice) {
        var newest = choice.newest();
        if (newest == null) return Optional.empty();
        var publication = choice.publication();
        if (choice.lookAtPublished() && choice.published() != null && publication != null)
            return Optional.of(publication.plan());
        return Optional.of(newest.id());
    }

    Optional<VisitTrial> attempt(VisitSeen seen) {
        return moves.attempt(signedIn.person(), seen);
    }

    /** To be asked beside the page, since it takes seconds; nothing where the visit is gone by then. */
    Supplier<Optional<WhySheet>> why(FolderShown shown, VisitSeen seen) {
        Person who = signedIn.person();
        Speech say = new Speech(who.reading());
        return () -> reasons.why(who, seen).map(why -> WhySheet.of(say, shown, why, reasons.moves(who, seen)));
    }

    /** Answers what would plan a task, to be asked beside the page; nothing where the person may not ask. */
    Optional<Function<VisitSeen, Optional<String>>> remedies() {
        Person who = signedIn.person();
        Speech say = new Speech(who.reading());
        if (!who.may(Operation.MOVE_VISIT)) return Optional.empty();
        return Optional.of(seen -> reasons.remedy(who, seen).map(remedy -> WhySheet.remedy(say, remedy)));
    }

    MoveResult move(VisitSeen seen, CrewId crew, Instant start) {
        return moves.move(signedIn.person(), seen, crew, start);
    }

    void pin(VisitSeen seen, Visit visit) {
        pins.pin(signedIn.person(), seen.folder(), visit);
    }

    /** Whether it was a person's pin; one of the imported folder stays. */
    boolean unpin(VisitSeen seen, Visit visit) {
        return pins.unpin(signedIn.person(), seen.folder(), visit);
    }

    /** Shows the newest plan and what is pinned by now. */
    void showNewest() {
        desk.lookAtPublished(false);
    }

    void refresh() {
        desk.refresh();
    }
}
