package drylap.intake.generate;

import drylap.assembly.Method;
import drylap.kernel.Task;
import drylap.planning.LabourRow;
import drylap.planning.LabourTable;
import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Minutes of a crew of two; assumptions of this project, to be replaced from a contractor's own log. */
final class Labour {
    static final LabourTable TABLE = new LabourTable(List.of(
            row(Task.INSTALL, Method.A, "52", "11", "12"),
            row(Task.INSTALL, Method.A1, "62", "11", "12"),
            row(Task.INSTALL, Method.B, "46", "10", "12"),
            row(Task.INSTALL, Method.B1, "56", "10", "12"),
            row(Task.TEST, null, "45", "0", "0"),
            row(Task.WRAP, null, "8", "2.5", "0"),
            row(Task.CLAD, null, "18", "7.5", "0")));

    private Labour() {}

    private static LabourRow row(Task task, @Nullable Method method, String fixed, String perM2, String pan) {
        return new LabourRow(
                task, method, new BigDecimal(fixed), new BigDecimal(perM2), new BigDecimal(pan), 20, 10, 5);
    }
}
