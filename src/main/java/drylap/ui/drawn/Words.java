package drylap.ui.drawn;

import drylap.assembly.Approach;
import drylap.assembly.Method;
import drylap.assembly.SecondLayer;
import drylap.kernel.Task;
import drylap.kernel.Trade;
import drylap.sites.Facade;
import drylap.sites.Opening;
import drylap.speech.Part;
import drylap.speech.Saying;
import drylap.speech.Speech;
import java.util.Locale;

/** The trade's words for what the records hold as codes and numbers; times in English, for screens that know no other language. */
public final class Words {
    private static final String[] COMPASS = {
        "north", "north-east", "east", "south-east", "south", "south-west", "west", "north-west"
    };

    private Words() {}

    /** With a thin space between the thousands. */
    public static String number(long value) {
        return String.format(Locale.ROOT, "%,d", value).replace(',', '\u2009');
    }

    /** Signed, so that more and less are told apart without colour. */
    public static String difference(Speech say, long value) {
        if (value == 0) return say.it("as before");
        return (value > 0 ? "+" : "\u2212") + number(Math.abs(value));
    }

    /** A heading within a sentence. */
    public static String lowered(String heading) {
        return Character.toLowerCase(heading.charAt(0)) + heading.substring(1);
    }

    public static String task(Task task) {
        return switch (task) {
            case INSTALL -> "Install";
            case TEST -> "Water test";
            case WRAP -> "Wrap";
            case CLAD -> "Clad";
        };
    }

    public static String crewOf(Trade trade) {
        return switch (trade) {
            case WINDOW -> "window crew";
            case TESTER -> "water testers";
            case WRAP -> "wrap crew";
            case SIDING -> "siding crew";
        };
    }

    /** The letter alone says too little, and some trade guides use it for something else. */
    public static Saying method(Method method) {
        return Saying.of(
                switch (method) {
                    case A -> "method A: barrier after the window, jamb flashing over the flange";
                    case A1 -> "method A1: barrier before the window, jamb flashing over the flange";
                    case B -> "method B: barrier after the window, jamb flashing behind the flange";
                    case B1 -> "method B1: barrier before the window, jamb flashing behind the flange";
                });
    }

    public static String approach(Approach approach) {
        return switch (approach) {
            case DRAINAGE -> "sill pan that drains";
            case BARRIER -> "sealed on all four sides, no pan";
        };
    }

    /** What a crew needs to know of an opening before it gets there. */
    public static Saying work(Task task, Opening opening) {
        var size = new Part.Size(opening.widthMm(), opening.heightMm());
        return switch (task) {
            case INSTALL -> Saying.of("{0}, {1}", size, method(opening.method()));
            case TEST -> Saying.of("{0}, before anything covers the laps", size);
            case WRAP -> Saying.of("{0}, {1}", size, below(opening.secondLayer()));
            case CLAD -> Saying.asItIs(size);
        };
    }

    private static Saying below(SecondLayer layer) {
        return Saying.of(
                switch (layer) {
                    case NONE -> "first barrier tucked under the apron";
                    case TUCK -> "second barrier tucked under the apron";
                    case DRAIN_BETWEEN -> "second barrier, drains between the layers";
                });
    }

    public static Saying heading(Facade facade) {
        int eighth = Math.floorMod(Math.round((float) facade.azimuthDeg() / 45), 8);
        return Saying.of("faces {0}, {1}°", Saying.of(COMPASS[eighth]), Math.round(facade.azimuthDeg()));
    }
}
