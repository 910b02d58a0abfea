package drylap.ui.drawn;

import drylap.pace.PaceSheet;
import drylap.pace.PaceSheet.OfCell;
import drylap.pace.PaceSheet.OfMethod;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * Install minutes as planned and as observed, in words.
 *
 * @param leftOut which complete installs the log does not time; empty where there are none
 */
public record PaceLines(List<OneMethod> methods, List<OneCell> cells, String leftOut) {
    /** @param standing what somebody answered; empty where nobody did */
    public record OneMethod(OfMethod of, String name, String minutes, String standing) {}

    public record OneCell(String crew, String method, String size, String minutes) {}

    public static PaceLines of(PaceSheet sheet) {
        return new PaceLines(
                sheet.methods().stream().map(PaceLines::method).toList(),
                sheet.cells().stream().map(PaceLines::cell).toList(),
                leftOut(sheet));
    }

    private static OneMethod method(OfMethod of) {
        String minutes = of.lately().openings() == 0
                ? "nothing observed in the last 90 days"
                : of.lately().words();
        return new OneMethod(of, "Method " + of.method(), minutes, standing(of));
    }

    private static String standing(OfMethod of) {
        if (of.inForce().isPresent()) {
            var answer = of.inForce().get();
            return "%s times the labour table as brought in, accepted by %s, learnt from %d openings"
                    .formatted(answer.factor().stripTrailingZeros().toPlainString(), answer.by(), answer.openings());
        }
        return of.newest()
                .filter(answer -> answer.kind() == drylap.planning.LabourAnswer.Kind.DECLINED)
                .map(answer -> "left as planned by " + answer.by())
                .orElse("");
    }

    private static OneCell cell(OfCell of) {
        var cell = of.cell();
        return new OneCell(
                cell.crew().value(),
                cell.method().code(),
                cell.size().words(),
                of.lately().words());
    }

    private static String leftOut(PaceSheet sheet) {
        if (sheet.leftOut().isEmpty()) return "";
        return "Left out: "
                + sheet.leftOut().entrySet().stream()
                        .sorted(Map.Entry.comparingByKey(Comparator.naturalOrder()))
                        .map(one ->
                                "%d %s".formatted(one.getValue(), one.getKey().words()))
                        .collect(Collectors.joining("; "))
                + ".";
    }
}
