package drylap.ui.drawn;

import drylap.kernel.OpeningId;
import drylap.kernel.Trade;
import drylap.progress.Exposed;
import drylap.progress.OpeningState;
import drylap.security.Operation;
import drylap.security.Person;
import drylap.ui.drawn.Aprons.LineToMark;
import drylap.ui.drawn.Aprons.Seen;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Fills the sheet of one apron. */
public final class ApronSheetPresenter {
    private ApronSheetPresenter() {}

    /** Empty where there is no such opening within sight. */
    public static Optional<ApronSheet> sheet(ApronFacts facts, Person who, OpeningId opening) {
        return facts.state(opening).map(state -> sheet(facts, who, state));
    }

    private static ApronSheet sheet(ApronFacts facts, Person who, OpeningState state) {
        var opening = state.opening();
        var hand = facts.hand(state);
        boolean handed = hand == Hand.RELEASED || hand == Hand.ACCEPTED;
        return new ApronSheet(
                opening.id(),
                "%s, level %d".formatted(facts.title(state), opening.level()),
                WallPresenter.glyph(state, facts.custody(state)),
                ApronWords.hand(facts.custody(state), hand, facts.site(state)),
                lines(facts, state, hand),
                new Seen(Map.of(opening.id(), state.version())),
                hand == Hand.RELEASED && who.may(Operation.ACCEPT, state.site()),
                handed && who.may(Operation.RETURN, state.site()),
                toMark(facts, who, state),
                redo(state));
    }

    private static List<String> lines(ApronFacts facts, OpeningState state, Hand hand) {
        List<String> lines = new ArrayList<>();
        lines.add(state.apron().words());
        lines.add(ApronWords.lap(state));
        lines.add(state.rating().words());
        state.exposures().stream().map(Exposed::words).forEach(lines::add);
        if (!hand.letGo()) lines.add(new Coming(facts).of(state));
        return List.copyOf(lines);
    }

    private static List<LineToMark> toMark(ApronFacts facts, Person who, OpeningState state) {
        if (!who.may(Operation.MARK_FOLLOW_ON, state.site())) return List.of();
        return facts.trade(who.crew())
                .map(own -> ApronPresenter.linesOf(List.of(state), own))
                .orElse(List.of());
    }

    private static List<ApronSheet.Redo> redo(OpeningState state) {
        return state.doneLines().stream()
                .map(drylap.progress.LineDone::line)
                .filter(line -> line.trade() == Trade.WINDOW && !line.release())
                .map(line -> new ApronSheet.Redo(line.code(), line.text()))
                .toList();
    }
}
