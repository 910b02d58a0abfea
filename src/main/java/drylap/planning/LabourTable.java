package drylap.planning;

import drylap.assembly.Approach;
import drylap.assembly.Method;
import drylap.assembly.StepList;
import drylap.kernel.Task;
import drylap.sites.Opening;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;

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
        return rows.stream()
                .filter(row -> row.task() == task && row.method() == method)
                .findFirst()
                .or(() -> rows.stream()
                        .filter(row -> row.task() == task && row.method() == null)
                        .findFirst())
                .or(() -> task == Task.TEST ? java.util.Optional.of(STANDARD_TEST) : java.util.Optional.empty())
                .orElseThrow(() ->
                        new IllegalStateException("no labour row for %s of method %s".formatted(task.code(), method)));
    }

    public int minutes(Opening opening, Task task) {
        int whole = wholeMinutes(opening, row(task, opening.method()), task);
        StepList list = opening.stepList();
        if (task != Task.INSTALL || !list.begun(opening.done())) return whole;
        return Math.max(LEAST_REMAINING_MIN, Math.ceilDiv(whole * list.remaining(opening.done()), list.total()));
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
