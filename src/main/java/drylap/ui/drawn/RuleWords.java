package drylap.ui.drawn;

import drylap.kernel.Rule;
import drylap.speech.Saying;

/** What each rule says, in the trade's words. */
final class RuleWords {
    private RuleWords() {}

    static Saying of(Rule rule) {
        return rule.ofSite() ? ofSite(rule) : Saying.of("Weight in the ledger: {0}", weight(rule));
    }

    private static Saying weight(Rule rule) {
        return Saying.of(
                switch (rule) {
                    case WEIGHT_LATE_HANDOVER -> "late hand-over";
                    case WEIGHT_CREW_DAYS -> "crew-days";
                    case WEIGHT_TRAVEL -> "travel";
                    case WEIGHT_SETUP -> "set-up";
                    case WEIGHT_OVERTIME -> "overtime";
                    case WEIGHT_OPEN_COURSE -> "courses begun, not finished";
                    case WEIGHT_RAIN_RISK -> "rain on an open opening";
                    case WEIGHT_CHANGED -> "changes to the published plan";
                    default -> throw new IllegalArgumentException("no words for " + rule);
                });
    }

    private static Saying ofSite(Rule rule) {
        return Saying.of(
                switch (rule) {
                    case RAIN_P -> "Rain counts from this chance on";
                    case RAIN_MM -> "Rain counts from this amount on";
                    case BEYOND_RAIN_P -> "Chance of rain in an hour that is not forecast";
                    case RAIN_PERSISTENCE -> "How rain lasts: one hour's rain goes with the next by";
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
                    case RAIN_WARNING_MIN -> "A crew sees rain coming ahead by";
                    case DURATION_BEST -> "A task takes at best";
                    case DURATION_WORST -> "A task takes at worst";
                    case DELIVERY_WORST_DAYS -> "A delivery comes late at most";
                    case WEATHER_CELL_KM -> "Sites share their weather up to";
                    case APRON_WIDTH_MM -> "Apron strips are wide";
                    case JAMB_FLASHING_MM -> "Jamb flashing is wide";
                    case HEAD_FLASHING_MM -> "Head flashing is wide";
                    case HEAD_PAST_JAMBS_MM -> "Head flashing goes past the jamb flashing by";
                    case PAN_WIDTH_MM -> "Sill pan strips are wide";
                    case PAN_TURN_UP_MM -> "A sill pan turns up by";
                    case STRIP_ROLL_M -> "A roll of strip is long";
                    case STRIP_LAP_MM -> "Pieces of a strip lap by";
                    case BEAD_MM -> "A sealant bead is thick";
                    case CARTRIDGE_ML -> "A cartridge of sealant holds";
                    case FASTENER_SPACING_MM -> "Flange fasteners are apart";
                    case ROUGH_CLEARANCE_MM -> "A rough opening is larger than its frame by";
                    case ROUGH_LEAST_GAP_MM -> "Room round a frame in its rough opening, at least";
                    case ROUGH_MOST_GAP_MM -> "Room round a frame in its rough opening, at most";
                    case ROUGH_SQUARE_MM -> "Diagonals of a rough opening differ by at most";
                    case PLUMB_2FT_MM -> "Out of plumb or level over 2 ft or less, at most";
                    case PLUMB_4FT_MM -> "Out of plumb or level over 4 ft or more, at most";
                    case TAKE_OFF_WASTE -> "Sealant that is wasted";
                    case STOREY_M -> "A storey is high";
                    case UPWIND_SLOPE -> "The ground upwind rises by";
                    case OBSTACLE_M -> "Nearest obstacle as high as the wall";
                    case WALL_FACTOR -> "What the wall's shape lets through (W of ISO 15927-3)";
                    case RAIN_DEPOSITION -> "What comes on to the wall (deposition factor of ASHRAE 160)";
                    case RAIN_ADMITTANCE -> "What comes on to the wall (Straube's rain admittance)";
                    default -> throw new IllegalArgumentException("no words for " + rule);
                });
    }
}
