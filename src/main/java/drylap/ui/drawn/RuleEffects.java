package drylap.ui.drawn;

import drylap.kernel.Rule;
import drylap.speech.Saying;

/** What each rule does, and what comes of raising or lowering it, in a sentence or two for whoever is to choose a number. */
final class RuleEffects {
    private RuleEffects() {}

    static Saying of(Rule rule) {
        if (!rule.ofSite()) return weight(rule);
        return switch (rule) {
            case RAIN_P, RAIN_MM, BEYOND_RAIN_P, RAIN_PERSISTENCE, WETTING, DRYING_H, LEE_SHARE, RAIN_WARNING_MIN ->
                rain(rule);
            case INSTALL_MIN_C, INSTALL_GUST, WRAP_GUST, DUSK_MARGIN_MIN, SKIN_MIN, CURE_BEFORE_TEST_H -> work(rule);
            case APRON_MAX_DAYS, BARE_MAX_DAYS, APRON_UV_DAYS, BARRIER_UV_DAYS, COVER_MIN, COVER_LETS_IN ->
                waiting(rule);
            case DURATION_BEST, DURATION_WORST, DELIVERY_WORST_DAYS, WEATHER_CELL_KM -> odds(rule);
            case STOREY_M, UPWIND_SLOPE, OBSTACLE_M, WALL_FACTOR, RAIN_DEPOSITION, RAIN_ADMITTANCE -> wall(rule);
            case ROUGH_LEAST_GAP_MM, ROUGH_MOST_GAP_MM, ROUGH_SQUARE_MM, PLUMB_2FT_MM, PLUMB_4FT_MM -> rough(rule);
            default -> takeOff(rule);
        };
    }

    private static Saying rain(Rule rule) {
        return Saying.of(
                switch (rule) {
                    case RAIN_P ->
                        "Hours less likely to be wet count as dry. Raise it and more hours are open and more plans get rained on; lower it and fewer hours are left.";
                    case RAIN_MM ->
                        "Less than this in an hour counts as no rain. Raise it and drizzle no longer stops work; lower it and it does.";
                    case BEYOND_RAIN_P ->
                        "Hours after the forecast are open, each with this chance of rain. Raise it and work beyond the forecast costs more, so it goes to forecast dry hours; lower it and it is put off more easily.";
                    case RAIN_PERSISTENCE ->
                        "Rain comes in spells. Raise it and a few hours together are hardly wetter than one; lower it and each hour is a chance of its own.";
                    case WETTING ->
                        "So much driven on to a wall makes it too wet to stick anything to. Raise it and walls stay open longer; lower it and they shut after less.";
                    case DRYING_H ->
                        "After a wall was wetted, nothing is stuck to it for so long. Raise it and more hours are lost after rain; lower it and strips may go on to a damp wall.";
                    case LEE_SHARE ->
                        "The rain call counts so much of the rain for a wall that the wind does not blow on. Raise it and such walls come earlier in its order; lower it and later.";
                    case RAIN_WARNING_MIN ->
                        "When odds are reckoned, crews see rain so long before it comes and close up. Raise it and fewer openings get wet; lower it and more do.";
                    default -> throw new IllegalArgumentException("no effect for " + rule);
                });
    }

    private static Saying work(Rule rule) {
        return Saying.of(
                switch (rule) {
                    case INSTALL_MIN_C ->
                        "Colder hours are shut for installs, since sealant does not hold. Raise it and cold mornings are lost; lower it only where the maker's data sheet allows.";
                    case INSTALL_GUST ->
                        "Hours with stronger gusts are shut for installs and water tests. Raise it and windier hours are used; lower it and fewer are. It says nothing about safety.";
                    case WRAP_GUST ->
                        "Hours with stronger gusts are shut for wrap. Raise it and windier hours are used; lower it and fewer are. It says nothing about safety.";
                    case DUSK_MARGIN_MIN ->
                        "Work ends so long before sunset. Raise it and short days lose more; lower it and crews may finish in the dusk.";
                    case SKIN_MIN ->
                        "Installs end so long before rain, so that sealant gets its skin. Raise it and more hours before rain are lost; lower it and fresh beads may wash out.";
                    case CURE_BEFORE_TEST_H ->
                        "A water test waits so long after its install. Raise it and tests come later; lower it only where the maker's data sheet allows.";
                    default -> throw new IllegalArgumentException("no effect for " + rule);
                });
    }

    private static Saying waiting(Rule rule) {
        return Saying.of(
                switch (rule) {
                    case APRON_MAX_DAYS ->
                        "The wrap of an opening comes within so many days of the installs of its course. Lower it and wrap crews must follow sooner, or installs are left out; raise it only where the maker allows.";
                    case BARE_MAX_DAYS ->
                        "An opening of method A or B is wrapped within so many days of its install. Lower it and wrap crews must follow sooner; raise it and walls stay bare longer.";
                    case APRON_UV_DAYS ->
                        "Screens warn once an apron has had so much sun. Raise it and the warning comes later; lower it and sooner.";
                    case BARRIER_UV_DAYS ->
                        "Screens warn once a barrier has had so much sun. Raise it and the warning comes later; lower it and sooner.";
                    case COVER_MIN ->
                        "The rain call counts so long for covering an opening. Raise it and fewer are reached before the rain, and closing is preferred; lower it and covering is.";
                    case COVER_LETS_IN ->
                        "The rain call counts so much of the rain as getting in behind a cover. Raise it and closing is preferred to covering; lower it and covering is.";
                    default -> throw new IllegalArgumentException("no effect for " + rule);
                });
    }

    private static Saying odds(Rule rule) {
        return Saying.of(
                switch (rule) {
                    case DURATION_BEST ->
                        "When odds are reckoned, no task takes less than this share of its minutes. Raise it and early hand-overs are rarer; lower it and they are likelier.";
                    case DURATION_WORST ->
                        "When odds are reckoned, no task takes more than this share of its minutes. Raise it and late hand-overs are likelier; lower it and they are rarer.";
                    case DELIVERY_WORST_DAYS ->
                        "When odds are reckoned, windows come up to so many days late. Raise it and late hand-overs are likelier; lower it and they are rarer.";
                    case WEATHER_CELL_KM ->
                        "When odds are reckoned, sites nearer to each other than this get the same drawn weather. Raise it and sites get wet together; lower it and each by itself.";
                    default -> throw new IllegalArgumentException("no effect for " + rule);
                });
    }

    private static Saying wall(Rule rule) {
        return Saying.of(
                switch (rule) {
                    case STOREY_M ->
                        "Height of an opening above the ground, by its level. Raise it and more rain is reckoned on upper walls; lower it and less. Shown only, not planned by.";
                    case UPWIND_SLOPE ->
                        "Wind is stronger above rising ground. Raise it and more rain is reckoned on the wall. Shown only, not planned by.";
                    case OBSTACLE_M ->
                        "Buildings or trees before the wall keep rain off. Raise it, that is put them further away, and more rain is reckoned; lower it and less. Shown only, not planned by.";
                    case WALL_FACTOR, RAIN_DEPOSITION, RAIN_ADMITTANCE ->
                        "The share of driven rain that comes on to this wall, by one of the ways to reckon it. Raise it and more is shown; lower it and less. Shown only, not planned by.";
                    default -> throw new IllegalArgumentException("no effect for " + rule);
                });
    }

    private static Saying rough(Rule rule) {
        return Saying.of(
                switch (rule) {
                    case ROUGH_LEAST_GAP_MM ->
                        "A rough opening as measured with less room for its frame does not fit. Raise it and more are too small; lower it and fewer are.";
                    case ROUGH_MOST_GAP_MM ->
                        "A rough opening as measured with more room for its frame does not fit. Raise it and fewer are too large; lower it and more are.";
                    case ROUGH_SQUARE_MM ->
                        "A rough opening whose diagonals differ by more is to be shimmed. Raise it and fewer are; lower it and more are.";
                    case PLUMB_2FT_MM, PLUMB_4FT_MM ->
                        "A jamb or sill further out, by its length, is to be shimmed. Raise it and fewer are; lower it and more are.";
                    default -> throw new IllegalArgumentException("no effect for " + rule);
                });
    }

    private static Saying takeOff(Rule rule) {
        return Saying.of(
                switch (rule) {
                    case APRON_WIDTH_MM, JAMB_FLASHING_MM, HEAD_FLASHING_MM, PAN_WIDTH_MM ->
                        "A size on the van list. Other widths are other rolls; the number of strips does not change with it.";
                    case HEAD_PAST_JAMBS_MM ->
                        "Raise it and head flashing is cut longer; lower it and shorter, and may not cover the jamb flashing.";
                    case PAN_TURN_UP_MM ->
                        "Raise it and sill pans are cut longer; lower it and the corners turn up less.";
                    case STRIP_ROLL_M -> "Raise it and fewer rolls are on the van list; lower it and more are.";
                    case STRIP_LAP_MM ->
                        "Strips longer than a roll are made of pieces. Raise it and these lap more and take more of the rolls; lower it only where the strip's maker allows.";
                    case BEAD_MM ->
                        "Raise it and more sealant is on the van list, four times as much for a bead twice as thick; lower it and less.";
                    case CARTRIDGE_ML -> "Raise it and fewer cartridges are on the van list; lower it and more are.";
                    case FASTENER_SPACING_MM ->
                        "Raise it and fewer fasteners are on the van list; lower it and more are. The window maker's instructions come first.";
                    case ROUGH_CLEARANCE_MM ->
                        "Added to frame sizes where a window schedule gives no rough opening. Raise it and openings get larger; lower it and smaller.";
                    case TAKE_OFF_WASTE -> "Raise it and more sealant is on the van list; lower it and less.";
                    default -> throw new IllegalArgumentException("no effect for " + rule);
                });
    }

    private static Saying weight(Rule rule) {
        return Saying.of(
                switch (rule) {
                    case WEIGHT_LATE_HANDOVER ->
                        "Raise it and plans keep hand-over dates even at more crew-days or travel; lower it and they may slip.";
                    case WEIGHT_CREW_DAYS ->
                        "Raise it and plans use fewer crew-days; lower it and work is spread over more of them.";
                    case WEIGHT_TRAVEL ->
                        "Raise it and crews drive less; lower it and they go where it suits other terms.";
                    case WEIGHT_SETUP ->
                        "Raise it and crews change wall and level less often; lower it and they change more freely.";
                    case WEIGHT_OVERTIME -> "Raise it and less is done after hours; lower it and more is.";
                    case WEIGHT_OPEN_COURSE ->
                        "Raise it and courses are finished soon after they were begun; lower it and they may stay open longer.";
                    case WEIGHT_RAIN_RISK ->
                        "Raise it and installs go to the driest hours; lower it and they go where they fit.";
                    case WEIGHT_CHANGED ->
                        "Raise it and a new plan keeps to the published one; lower it and it moves visits more freely.";
                    default -> throw new IllegalArgumentException("no effect for " + rule);
                });
    }
}
