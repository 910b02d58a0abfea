package drylap.planning;

import drylap.assembly.Method;
import drylap.kernel.Task;
import java.math.BigDecimal;
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
        int setupLevelMin) {}
