package drylap.windowschedule;

import drylap.assembly.Method;
import drylap.kernel.Coded;
import java.util.Optional;

/**
 * What a bare A or B means in a schedule. ASTM E2112 tells by the letter where the jamb flashing lies; some trade guides tell by it whether the
 * barrier comes after or before the window, and then where the flashing lies has to be said for all of them.
 */
public enum LetterMeaning implements Coded {
    JAMB_FLASHING("jamb-flashing", "A: jamb flashing over the flange, B: behind it (ASTM E2112)", Method.A, Method.B),
    BARRIER_OVER_FLANGE(
            "barrier-over", "A: barrier after the window, B: before it; flashing over the flange", Method.A, Method.A1),
    BARRIER_BEHIND_FLANGE(
            "barrier-behind",
            "A: barrier after the window, B: before it; flashing behind the flange",
            Method.B,
            Method.B1);

    private final String code;
    private final String words;
    private final Method a;
    private final Method b;

    LetterMeaning(String code, String words, Method a, Method b) {
        this.code = code;
        this.words = words;
        this.a = a;
        this.b = b;
    }

    @Override
    public String code() {
        return code;
    }

    public String words() {
        return words;
    }

    /** The method of a bare letter; none where it is neither. */
    Optional<Method> of(String letter) {
        return switch (letter) {
            case "A" -> Optional.of(a);
            case "B" -> Optional.of(b);
            default -> Optional.empty();
        };
    }
}
