package drylap.planning;

import drylap.assembly.Method;
import drylap.speech.Saying;
import java.math.BigDecimal;
import java.util.Optional;

/**
 * An answer on install minutes that someone gives.
 *
 * @param factor of the imported minutes
 * @param openings the installs that it was learnt from
 * @param seenId the newest answer on the method that the person saw, 0 for none
 */
public record LabourRequest(Method method, LabourAnswer.Kind kind, BigDecimal factor, int openings, long seenId) {
    public static final BigDecimal LEAST = new BigDecimal("0.25");
    public static final BigDecimal MOST = new BigDecimal("4");

    /** What is wrong with it, and what would be right. */
    Optional<Saying> problem() {
        if (factor.compareTo(LEAST) >= 0 && factor.compareTo(MOST) <= 0) return Optional.empty();
        return Optional.of(Saying.of(
                "install minutes of method {0} times {1}; accepted is a factor from {2} to {3}",
                method, factor.toPlainString(), LEAST, MOST));
    }
}
