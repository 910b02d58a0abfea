package drylap.planning;

import drylap.assembly.Approach;
import drylap.assembly.Method;
import drylap.assembly.StepList;
import drylap.kernel.Task;
import drylap.sites.Opening;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The contractor's minutes per task and method. Sums are exact decimals, so that rounding up never adds a stray minute. */
public record LabourTable(List<LabourRow> rows) {
    /** A closed partly done install still costs at least this. */
    public static final int LEAST_REMAINING_MIN = 10;

    private static final LabourRow STANDARD_TEST =
            new LabourRow(Task.TEST, null, new BigDecimal(45), BigDecimal.ZERO, BigDecimal.ZERO, 0, 0, 0);

    public LabourTable {
        rows = List.copyOf(rows);
    }

    /** @throws IllegalStateException where the table has no row for the task; the reader refuses such a folder */
    public LabourRow row(Task task, Method method) {
        LabourRow own = find(task, method);
        LabourRow row = own != null ? own : find(task, null);
        if (row != null) return row;
        if (task == Task.TEST) return STANDARD_TEST;
        throw new IllegalStateException("no labour row for %s of method %s".formatted(task.code(), method));
    }

    private @Nullable LabourRow find(Task task, @Nullable Method method) {
        for (LabourRow row : rows) if (row.task() == task && row.method() == method) return row;
        return null;
    }

    /** Whether it has minutes for a task of openings of this method; a test has minutes of its own. */
    public boolean serves(Task task, Method method) {
        return task == Task.TEST || find(task, method) != null || find(task, null) != null;
    }

    public int minutes(Opening opening, Task task) {
        int whole = wholeMinutes(opening, row(task, opening.method()), task);
        StepList list = opening.stepList();
        if (task != Task.INSTALL || !list.begun(opening.done())) return whole;
        return Math.max(LEAST_REMAINING_MIN, Math.ceilDiv(whole * list.remaining(opening.done()), list.total()));
    }

    /** The install of a whole opening, whatever of it is done. */
    public int installMinutes(Opening opening) {
        return wholeMinutes(opening, row(Task.INSTALL, opening.method()), Task.INSTALL);
    }

    /** With the work of a method's install, its set-up apart, so many times as long; to a tenth of a minute. */
    public LabourTable withInstall(Method method, BigDecimal factor) {
        List<LabourRow> now = new ArrayList<>(rows);
        now.removeIf(row -> row.task() == Task.INSTALL && row.method() == method);
        now.add(row(Task.INSTALL, method).times(factor, method));
        return new LabourTable(now);
    }

    private static int wholeMinutes(Opening opening, LabourRow row, Task task) {
        BigDecimal squareMetres = BigDecimal.valueOf(opening.widthMm())
                .multiply(BigDecimal.valueOf(opening.heightMm()))
                .movePointLeft(6);
        boolean pan = task == Task.INSTALL && opening.approach() == Approach.DRAINAGE;
        return row.fixedMin()
                .add(row.perM2Min().multiply(squareMetres))
                .add(pan ? row.panMin() : BigDecimal.ZERO)
                .setScale(0, RoundingMode.CEILING)
                .intValueExact();
    }
}
