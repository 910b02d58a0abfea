package drylap.audit;

import drylap.assembly.Approach;
import drylap.assembly.Method;
import drylap.assembly.StepList;
import drylap.kernel.FacadeId;
import drylap.kernel.Task;
import drylap.planning.LabourRow;
import drylap.sites.Opening;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Minutes of tasks and of setting up, reckoned anew from the rows of the labour table (section 2). */
record WorkMinutes(List<LabourRow> rows) {
    private static final int LEAST_REMAINING = 10;
    private static final BigDecimal TEST_MIN = new BigDecimal(45);
    private static final BigDecimal MM2_IN_M2 = new BigDecimal(1_000_000);

    /** The most specific row: the method's own, else the one for any method. */
    private LabourRow row(Task task, Method method) {
        LabourRow any = null;
        for (LabourRow row : rows) {
            if (row.task() != task) continue;
            if (row.method() == method) return row;
            if (row.method() == null && any == null) any = row;
        }
        if (any == null && task == Task.TEST)
            any = new LabourRow(task, null, TEST_MIN, BigDecimal.ZERO, BigDecimal.ZERO, 0, 0, 0);
        if (any == null) throw new IllegalArgumentException("labour has no row for " + task.code() + " " + method);
        return any;
    }

    int of(Opening opening, Task task) {
        int whole = whole(opening, task);
        StepList list = opening.stepList();
        int left = list.remaining(opening.done());
        if (task != Task.INSTALL || left == list.total()) return whole;
        int share = (whole * left + list.total() - 1) / list.total();
        return Math.max(LEAST_REMAINING, share);
    }

    private int whole(Opening opening, Task task) {
        LabourRow row = row(task, opening.method());
        BigDecimal area = new BigDecimal(opening.widthMm())
                .multiply(new BigDecimal(opening.heightMm()))
                .divide(MM2_IN_M2);
        BigDecimal sum = row.fixedMin().add(row.perM2Min().multiply(area));
        if (task == Task.INSTALL && opening.approach() == Approach.DRAINAGE) sum = sum.add(row.panMin());
        return sum.setScale(0, RoundingMode.CEILING).intValueExact();
    }

    /** Minutes of setting up for a task after the crew's previous one of the day; only the largest change counts. */
    int setup(Opening opening, Task task, @Nullable Opening previous) {
        LabourRow row = row(task, opening.method());
        FacadeId facade = opening.facade();
        if (previous == null || !previous.facade().site().equals(facade.site())) return row.setupSiteMin();
        if (!previous.facade().equals(facade)) return row.setupFacadeMin();
        return previous.level() != opening.level() ? row.setupLevelMin() : 0;
    }
}
