package drylap.planning;

import drylap.kernel.Rule;
import drylap.kernel.SiteId;
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
    Optional<String> problem() {
        if (reason.isBlank() || reason.strip().length() > LONGEST_REASON)
            return Optional.of("say why, in 1 to %d characters".formatted(LONGEST_REASON));
        if (site != null && !rule.ofSite())
            return Optional.of("%s weighs the whole plan; change it for everywhere".formatted(rule.code()));
        if (value == null || fits(value)) return Optional.empty();
        return Optional.of("%s is %s; accepted is a %s from %s to %s %s"
                .formatted(
                        rule.code(),
                        plain(value),
                        rule.whole() ? "whole number" : "number",
                        plain(rule.least()),
                        plain(rule.most()),
                        rule.unit()));
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
