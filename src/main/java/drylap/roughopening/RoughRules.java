package drylap.roughopening;

import static drylap.roughopening.RoughPlace.LEVEL_SILL;
import static drylap.roughopening.RoughPlace.PLUMB_LEFT;
import static drylap.roughopening.RoughPlace.PLUMB_RIGHT;

import drylap.kernel.Rule;
import drylap.kernel.Rules;
import drylap.roughopening.RoughVerdict.Finding;
import drylap.roughopening.RoughVerdict.Grade;
import drylap.speech.Saying;
import java.util.List;

/**
 * Judges measured sizes. A frame needs room all round: the smallest width less what both jambs lean, the smallest height less what the sill is out
 * of level (deduced: a plumb frame in leaning jambs loses what the lesser of them leans, and at most that much is known to be lost). What is out of plumb, level or
 * square and leaves room is shimmed.
 */
public final class RoughRules {
    /** From here on the tolerance over two feet grows to that over four. */
    private static final double TWO_FEET_MM = 609.6;

    private static final double FOUR_FEET_MM = 1_219.2;
    /** Rounding of inches to millimetres that is not held against anyone. */
    private static final double ROUNDING_MM = 0.05;

    private final RoughSizes sizes;
    private final Rules rules;

    private RoughRules(RoughSizes sizes, Rules rules) {
        this.sizes = sizes;
        this.rules = rules;
    }

    /**
     * Judges by the rules in force at the opening's site.
     *
     * @param widthMm of the rough opening as designed, as is the height
     */
    public static RoughVerdict judge(RoughSizes sizes, int widthMm, int heightMm, Rules rules) {
        return new RoughRules(sizes, rules).judge(widthMm, heightMm);
    }

    private RoughVerdict judge(int widthMm, int heightMm) {
        double clearance = rules.value(Rule.ROUGH_CLEARANCE_MM);
        double lean = Math.min(sizes.at(PLUMB_LEFT), sizes.at(PLUMB_RIGHT));
        double width = sizes.leastWidth() - lean;
        double height = sizes.leastHeight() - sizes.at(LEVEL_SILL);
        return RoughVerdict.of(List.of(
                room(Saying.of("width"), width, sizes.mostWidth(), widthMm - clearance),
                room(Saying.of("height"), height, sizes.mostHeight(), heightMm - clearance),
                off(
                        Saying.of("Diagonals differ by"),
                        sizes.outOfSquare(),
                        rules.value(Rule.ROUGH_SQUARE_MM),
                        Rule.ROUGH_SQUARE_MM),
                off(Saying.of("The left jamb is out of plumb by"), sizes.at(PLUMB_LEFT), sizes.leastHeight()),
                off(Saying.of("The right jamb is out of plumb by"), sizes.at(PLUMB_RIGHT), sizes.leastHeight()),
                off(Saying.of("The sill is out of level by"), sizes.at(LEVEL_SILL), sizes.leastWidth())));
    }

    private Finding room(Saying side, double least, double most, double frame) {
        double tooSmall = rules.value(Rule.ROUGH_LEAST_GAP_MM) - (least - frame);
        double tooLarge = most - frame - rules.value(Rule.ROUGH_MOST_GAP_MM);
        if (tooSmall > ROUNDING_MM)
            return room(
                    Grade.REPORT,
                    side,
                    least,
                    frame,
                    Saying.of("too small by {0}", Inches.words(tooSmall)),
                    Rule.ROUGH_LEAST_GAP_MM);
        if (tooLarge > ROUNDING_MM)
            return room(
                    Grade.REPORT,
                    side,
                    most,
                    frame,
                    Saying.of("too large by {0}", Inches.words(tooLarge)),
                    Rule.ROUGH_MOST_GAP_MM);
        return room(Grade.FITS, side, least, frame, Saying.of("enough"), Rule.ROUGH_LEAST_GAP_MM);
    }

    private Finding room(Grade grade, Saying side, double opening, double frame, Saying what, Rule limit) {
        return new Finding(
                grade,
                Saying.of(
                        limit == Rule.ROUGH_LEAST_GAP_MM
                                ? "Room for a frame of {0} in {1}: {2}, {3}; {4} in all is the least."
                                : "Room for a frame of {0} in {1}: {2}, {3}; {4} in all is the most.",
                        Inches.words(frame),
                        side,
                        Inches.words(opening),
                        what,
                        Inches.words(rules.value(limit))),
                limit.source());
    }

    private Finding off(Saying words, double off, double over) {
        double low = rules.value(Rule.PLUMB_2FT_MM);
        double high = rules.value(Rule.PLUMB_4FT_MM);
        double share = Math.clamp((over - TWO_FEET_MM) / (FOUR_FEET_MM - TWO_FEET_MM), 0, 1);
        return off(words, off, low + (high - low) * share, Rule.PLUMB_4FT_MM);
    }

    private static Finding off(Saying words, double off, double limit, Rule rule) {
        boolean within = off <= limit + ROUNDING_MM;
        return new Finding(
                within ? Grade.FITS : Grade.SHIM,
                Saying.of(
                        within
                                ? "{0} {1}; up to {2} is within tolerance."
                                : "{0} {1}; up to {2} is within tolerance: shim.",
                        words,
                        Inches.words(off),
                        Inches.words(limit)),
                rule.source());
    }
}
