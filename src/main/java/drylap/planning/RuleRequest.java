package drylap.planning;

import drylap.kernel.Rule;
import drylap.kernel.SiteId;
import drylap.speech.Saying;
import java.math.BigDecimal;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A change of a rule that someone asks for.
 *
 * @param site where it shall hold; none for everywhere
 * @param value none to go back to what was imported, or else to the default
 * @param seenId the newest change of it that the person saw, 0 for none
 */
public record RuleRequest(
        @Nullable SiteId site, Rule rule, @Nullable Double value, String reason, long seenId) {
    private static final int LONGEST_REASON = 200;

    /** What is wrong with it, and what would be right. */
    Optional<Saying> problem() {
        if (reason.isBlank() || reason.strip().length() > LONGEST_REASON)
            return Optional.of(Saying.of("say why, in 1 to {0} characters", LONGEST_REASON));
        if (site != null && !rule.ofSite())
            return Optional.of(Saying.of("a weight counts for the whole plan; change it for everywhere"));
        if (value == null || fits(value)) return Optional.empty();
        return Optional.of(Saying.of(
                rule.whole()
                        ? "{0} was put in; accepted is a whole number from {1} to {2} {3}"
                        : "{0} was put in; accepted is a number from {1} to {2} {3}",
                plain(value),
                plain(rule.least()),
                plain(rule.most()),
                Saying.of(rule.unit())));
    }

    private boolean fits(double asked) {
        return asked >= rule.least() && asked <= rule.most() && (!rule.whole() || asked == Math.rint(asked));
    }

    static String plain(double value) {
        return Double.isFinite(value)
                ? BigDecimal.valueOf(value).stripTrailingZeros().toPlainString()
                : String.valueOf(value);
    }
}
