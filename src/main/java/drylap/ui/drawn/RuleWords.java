package drylap.ui.drawn;

import drylap.kernel.Rule;

/** What each rule says, in the trade's words. */
final class RuleWords {
    private RuleWords() {}

    static String of(Rule rule) {
        return rule.ofSite()
                ? ofSite(rule)
                : "Weight in the ledger: "
                        + rule.code().substring("weight_".length()).replace('_', ' ');
    }

    private static String ofSite(Rule rule) {
        return switch (rule) {
            case RAIN_P -> "Rain counts from this chance on";
            case RAIN_MM -> "Rain counts from this amount on";
            case WETTING -> "A wall counts as wetted from this driving rain on";
            case DRYING_H -> "A wetted wall dries for";
            case INSTALL_MIN_C -> "Coldest to install";
            case INSTALL_GUST -> "Strongest gust to install or test";
            case WRAP_GUST -> "Strongest gust to wrap";
            case DUSK_MARGIN_MIN -> "Work ends before sunset by";
            case SKIN_MIN -> "Sealant skins before rain for";
            case CURE_BEFORE_TEST_H -> "Sealant cures before a water test for";
            case APRON_MAX_DAYS -> "An apron waits for the wrap at most";
            case BARE_MAX_DAYS -> "An opening waits for its barrier at most";
            case APRON_UV_DAYS -> "Sun on an apron at most";
            case BARRIER_UV_DAYS -> "Sun on a barrier at most";
            case COVER_MIN -> "A temporary cover takes";
            case COVER_LETS_IN -> "Rain that gets in behind a cover over open laps";
            case LEE_SHARE -> "Rain on a wall in the lee";
            default -> throw new IllegalArgumentException("no words for " + rule);
        };
    }
}
