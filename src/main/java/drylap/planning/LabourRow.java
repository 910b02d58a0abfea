package drylap.planning;

import drylap.assembly.Method;
import drylap.kernel.Task;
import java.math.BigDecimal;
import java.math.RoundingMode;
import org.jspecify.annotations.Nullable;

/** How long a task takes, in minutes; a row without a method serves every method that has no row of its own. */
public record LabourRow(
        Task task,
        @Nullable Method method,
        BigDecimal fixedMin,
        BigDecimal perM2Min,
        BigDecimal panMin,
        int setupSiteMin,
        int setupFacadeMin,
        int setupLevelMin) {

    /** The row of one method with its work, not its set-up, so many times as long. */
    LabourRow times(BigDecimal factor, Method ofMethod) {
        return new LabourRow(
                task,
                ofMethod,
                tenths(fixedMin, factor),
                tenths(perM2Min, factor),
                tenths(panMin, factor),
                setupSiteMin,
                setupFacadeMin,
                setupLevelMin);
    }

    private static BigDecimal tenths(BigDecimal minutes, BigDecimal factor) {
        return minutes.multiply(factor).setScale(1, RoundingMode.HALF_UP);
    }
}
