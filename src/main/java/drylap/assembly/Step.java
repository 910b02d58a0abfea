package drylap.assembly;

import drylap.kernel.Coded;
import drylap.kernel.Trade;

/**
 * One thing that a crew does at an opening. The constants stand in the order in which a crew takes them where the laps leave
 * a choice: a free edge is secured at once, barriers that come first come before the window crew.
 */
public enum Step implements Coded {
    SECURE_APRON("APR.secure", "secure the lower edge of the apron", Trade.WRAP),
    SECURE_JAMB_TAILS("JF.secure", "secure the tails of the jamb flashing", Trade.WRAP),
    FINISH_SILL_JOINT("SET.edge", "finish the joint of sill flange and closure, leave weeps", Trade.WRAP),
    BARRIER_SILL("W1S", "first barrier below the sill", Trade.WRAP),
    BARRIER_JAMB("W1J", "first barrier beside the jambs", Trade.WRAP),
    BARRIER_HEAD("W1H", "first barrier above the head", Trade.WRAP),
    ACCEPT("RO", "accept the rough opening: size, square, plumb, level, dry", Trade.WINDOW),
    OPEN_FLAP("W1H.open", "cut the barrier, head cuts at 45°, fold the flap up and hold it", Trade.WINDOW),
    APRON("APR", "apron under the sill, top edge held", Trade.WINDOW),
    PAN("PAN", "sill pan with end dams and back dam", Trade.WINDOW),
    JAMB_FLASHING("JF", "jamb flashing on both sides", Trade.WINDOW),
    SET("SET", "bed and set the window: shim, plumb, level, square, fasten", Trade.WINDOW),
    HEAD_FLASHING("HF", "head flashing over the tops of the jamb flashing", Trade.WINDOW),
    CLOSE_FLAP("W1H.close", "flap down over the head flashing, tape the diagonal cuts", Trade.WINDOW),
    AIR_SEAL("IAS", "air seal from inside", Trade.WINDOW),
    WATER_TEST("TEST", "water test before anything covers the laps", Trade.TESTER),
    RELEASE("RELEASE", "check, photograph, release to the trade that follows", Trade.WINDOW),
    SECOND_SILL("W2S", "second barrier below the sill", Trade.WRAP),
    CLOSURE("TRM", "closure over the upper edge of the second barrier", Trade.WRAP),
    SECOND_JAMB("W2J", "second barrier beside the jambs", Trade.WRAP),
    SECOND_HEAD("W2H", "second barrier above the head", Trade.WRAP),
    CLADDING("CLD", "cladding", Trade.SIDING);

    private final String code;
    private final String words;
    private final Trade trade;

    Step(String code, String words, Trade trade) {
        this.code = code;
        this.words = words;
        this.trade = trade;
    }

    @Override
    public String code() {
        return code;
    }

    /** What the crew does, in its own words. */
    public String words() {
        return words;
    }

    public Trade trade() {
        return trade;
    }

    /** The step that secures the free lower edge of a layer under which another is tucked. */
    static Step securing(Layer tucked) {
        return switch (tucked) {
            case APR -> SECURE_APRON;
            case JF -> SECURE_JAMB_TAILS;
            case FLS -> FINISH_SILL_JOINT;
            default -> throw new IllegalArgumentException(tucked + " has no free lower edge");
        };
    }
}
