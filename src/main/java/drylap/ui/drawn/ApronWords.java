package drylap.ui.drawn;

import drylap.handoff.Custody;
import drylap.progress.OpeningState;
import drylap.sites.Site;

/** What the follow-on trade wants to be told about one apron. */
final class ApronWords {
    private ApronWords() {}

    /** How the next layer goes to the apron, and where the apron then drains. */
    static String lap(OpeningState state) {
        var opening = state.opening();
        String how = switch (opening.secondLayer()) {
            case NONE ->
                opening.method().barrierFirst()
                        ? "nothing to tuck, the barrier is behind the apron"
                        : "tuck the first barrier under the apron";
            case TUCK -> "tuck the second barrier under the apron";
            case DRAIN_BETWEEN -> "second barrier over the apron, drain between: tuck nothing under it";
        };
        return "%s; drains to: %s".formatted(how, state.plane().words());
    }

    static String returned(Custody.Returned returned, Site site) {
        String note = returned.note().isBlank() ? "" : " (%s)".formatted(returned.note());
        return "%s%s, returned by %s, %s"
                .formatted(returned.reason().words(), note, returned.by(), Words.moment(returned.at(), site.zone()));
    }

    /** In whose hands it is, by whom and when. */
    static String hand(Custody custody, Hand hand, Site site) {
        return switch (custody) {
            case Custody.Unreleased _ -> hand.words();
            case Custody.Released released ->
                "released by %s, %s".formatted(released.by(), Words.moment(released.at(), site.zone()));
            case Custody.Accepted accepted ->
                "accepted by %s, %s".formatted(accepted.by(), Words.moment(accepted.at(), site.zone()));
            case Custody.Returned returned -> "returned: " + returned(returned, site);
        };
    }
}
