package drylap.ui.drawn;

import drylap.handoff.Custody;
import drylap.handoff.HandoffAct;
import drylap.handoff.HoldPoint;
import drylap.progress.Exposed;
import drylap.progress.OpeningState;
import drylap.sites.Site;
import drylap.speech.Saying;
import drylap.speech.Speech;
import drylap.ui.drawn.Aprons.Seen;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * What a scheduler asks about handing one opening over.
 *
 * @param state rain rating, missing laps, days of sun: a line each
 * @param against what speaks against its release; empty: it may be released
 * @param holds the hold points before it
 * @param acts the last acts at it, newest first
 */
public record HandoverSheet(
        String hand, List<String> state, List<String> against, List<Hold> holds, List<Act> acts, Seen seen) {
    private static final int LAST_ACTS = 5;

    public record Hold(HoldPoint point, String words, boolean passed) {}

    public record Act(long record, String words) {}

    public static HandoverSheet of(
            Speech say,
            OpeningState state,
            Custody custody,
            Site site,
            List<String> against,
            Map<HoldPoint, Boolean> holds,
            List<HandoffAct> acts) {
        var papers = new HandoffPapers(say, List.of(site), List.of(state.opening()));
        return new HandoverSheet(
                ApronWords.hand(say, custody, Hand.of(state, custody), site),
                lines(say, state),
                List.copyOf(against),
                holds.entrySet().stream()
                        .map(hold -> new Hold(
                                hold.getKey(),
                                say.it(
                                        hold.getValue() ? "{0}: yes" : "{0}: not yet",
                                        Saying.of(hold.getKey().words())),
                                hold.getValue()))
                        .toList(),
                papers.rows(acts, "", java.util.Optional.empty()).stream()
                        .limit(LAST_ACTS)
                        .map(row -> new Act(row.id(), say.it("{0}, {1} by {2}", row.when(), row.what(), row.who())))
                        .toList(),
                new Seen(Map.of(state.opening().id(), state.version())));
    }

    private static List<String> lines(Speech say, OpeningState state) {
        List<String> lines = new ArrayList<>();
        lines.add(say.it(state.rating().words()));
        state.missing().stream()
                .map(lap -> say.it("lap missing: {0}", lap.saying()))
                .forEach(lines::add);
        state.exposures().stream().map(Exposed::saying).map(say::it).forEach(lines::add);
        return List.copyOf(lines);
    }
}
