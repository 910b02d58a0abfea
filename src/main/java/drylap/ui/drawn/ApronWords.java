package drylap.ui.drawn;

import drylap.handoff.Custody;
import drylap.progress.OpeningState;
import drylap.sites.Site;
import drylap.speech.Saying;
import drylap.speech.Speech;

/** What the follow-on trade wants to be told about one apron. */
final class ApronWords {
    private ApronWords() {}

    /** How the next layer goes to the apron, and where the apron then drains. */
    static Saying lap(OpeningState state) {
        var opening = state.opening();
        var how = Saying.of(
                switch (opening.secondLayer()) {
                    case NONE ->
                        opening.method().barrierFirst()
                                ? "nothing to tuck, the barrier is behind the apron"
                                : "tuck the first barrier under the apron";
                    case TUCK -> "tuck the second barrier under the apron";
                    case DRAIN_BETWEEN -> "second barrier over the apron, drain between: tuck nothing under it";
                });
        return Saying.of("{0}; drains to: {1}", how, Saying.of(state.plane().words()));
    }

    static Saying returned(Speech say, Custody.Returned returned, Site site) {
        var reason = Saying.of(returned.reason().words());
        return Saying.of(
                "{0}, returned by {1}, {2}",
                returned.note().isBlank() ? reason : Saying.of("{0} ({1})", reason, returned.note()),
                returned.by(),
                say.moment(returned.at(), site.zone()));
    }

    /** In whose hands it is, by whom and when. */
    static String hand(Speech say, Custody custody, Hand hand, Site site) {
        return switch (custody) {
            case Custody.Unreleased _ -> say.it(hand.words());
            case Custody.Released released ->
                say.it("released by {0}, {1}", released.by(), say.moment(released.at(), site.zone()));
            case Custody.Accepted accepted ->
                say.it("accepted by {0}, {1}", accepted.by(), say.moment(accepted.at(), site.zone()));
            case Custody.Returned returned -> say.it("returned: {0}", returned(say, returned, site));
        };
    }
}
