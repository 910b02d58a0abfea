package drylap.planning;

import drylap.assembly.Method;
import drylap.kernel.Task;
import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Minutes of a crew of two with which a job begins; assumptions of this project, to be replaced from a contractor's own log. */
public final class StandardLabour {
    public static final LabourTable TABLE = new LabourTable(List.of(
            row(Task.INSTALL, Method.A, "52", "11", "12"),
            row(Task.INSTALL, Method.A1, "62", "11", "12"),
            row(Task.INSTALL, Method.B, "46", "10", "12"),
            row(Task.INSTALL, Method.B1, "56", "10", "12"),
            row(Task.TEST, null, "45", "0", "0"),
            row(Task.WRAP, null, "8", "2.5", "0"),
            row(Task.CLAD, null, "18", "7.5", "0")));

    private StandardLabour() {}

    private static LabourRow row(Task task, @Nullable Method method, String fixed, String perM2, String pan) {
        return new LabourRow(
                task, method, new BigDecimal(fixed), new BigDecimal(perM2), new BigDecimal(pan), 20, 10, 5);
    }
}
