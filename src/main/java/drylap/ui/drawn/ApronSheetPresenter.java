package drylap.ui.drawn;

import drylap.kernel.OpeningId;
import drylap.kernel.Trade;
import drylap.progress.Exposed;
import drylap.progress.OpeningState;
import drylap.security.Operation;
import drylap.security.Person;
import drylap.speech.Speech;
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
        var say = new Speech(who.reading());
        var hand = facts.hand(state);
        boolean handed = hand == Hand.RELEASED || hand == Hand.ACCEPTED;
        return new ApronSheet(
                opening.id(),
                say.it("{0}, level {1}", facts.title(state), opening.level()),
                WallPresenter.glyph(say, state, facts.custody(state)),
                ApronWords.hand(say, facts.custody(state), hand, facts.site(state)),
                lines(say, facts, state, hand),
                new Seen(Map.of(opening.id(), state.version())),
                hand == Hand.RELEASED && who.may(Operation.ACCEPT, state.site()),
                handed && who.may(Operation.RETURN, state.site()),
                toMark(say, facts, who, state),
                redo(say, state));
    }

    private static List<String> lines(Speech say, ApronFacts facts, OpeningState state, Hand hand) {
        List<String> lines = new ArrayList<>();
        lines.add(say.it(state.apron().saying()));
        lines.add(say.it(ApronWords.lap(state)));
        lines.add(say.it(state.rating().words()));
        state.exposures().stream().map(Exposed::saying).map(say::it).forEach(lines::add);
        if (!hand.letGo()) lines.add(new Coming(say, facts).of(state));
        return List.copyOf(lines);
    }

    private static List<LineToMark> toMark(Speech say, ApronFacts facts, Person who, OpeningState state) {
        if (!who.may(Operation.MARK_FOLLOW_ON, state.site())) return List.of();
        return facts.trade(who.crew())
                .map(own -> ApronPresenter.linesOf(say, List.of(state), own))
                .orElse(List.of());
    }

    private static List<ApronSheet.Redo> redo(Speech say, OpeningState state) {
        return state.doneLines().stream()
                .map(drylap.progress.LineDone::line)
                .filter(line -> line.trade() == Trade.WINDOW && !line.release())
                .map(line -> new ApronSheet.Redo(line.code(), say.it(line.saying())))
                .toList();
    }
}
