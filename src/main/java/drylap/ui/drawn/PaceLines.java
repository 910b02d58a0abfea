package drylap.ui.drawn;

import drylap.pace.PaceSheet;
import drylap.pace.PaceSheet.OfCell;
import drylap.pace.PaceSheet.OfMethod;
import drylap.planning.LabourAnswer;
import drylap.speech.Saying;
import drylap.speech.Speech;
import java.util.Comparator;
import java.util.List;
import java.util.Map;

/**
 * Install minutes as planned and as observed, in words.
 *
 * @param leftOut which complete installs the log does not time; empty where there are none
 */
public record PaceLines(List<OneMethod> methods, List<OneCell> cells, String leftOut) {
    /** @param standing what somebody answered; empty where nobody did */
    public record OneMethod(OfMethod of, String name, String minutes, String standing) {}

    public record OneCell(String crew, String method, String size, String minutes) {}

    public static PaceLines of(Speech say, PaceSheet sheet) {
        return new PaceLines(
                sheet.methods().stream().map(of -> method(say, of)).toList(),
                sheet.cells().stream().map(of -> cell(say, of)).toList(),
                leftOut(say, sheet));
    }

    private static OneMethod method(Speech say, OfMethod of) {
        String minutes = of.lately().openings() == 0
                ? say.it("nothing observed in the last 90 days")
                : say.it(of.lately().saying());
        return new OneMethod(of, say.it("Method {0}", of.method()), minutes, standing(say, of));
    }

    private static String standing(Speech say, OfMethod of) {
        if (of.inForce().isPresent()) {
            var answer = of.inForce().get();
            return say.it(
                    "{0} times the labour table as brought in, accepted by {1}, learnt from {2} openings",
                    answer.factor().stripTrailingZeros().toPlainString(), answer.by(), answer.openings());
        }
        return of.newest()
                .filter(answer -> answer.kind() == LabourAnswer.Kind.DECLINED)
                .map(answer -> say.it("left as planned by {0}", answer.by()))
                .orElse("");
    }

    private static OneCell cell(Speech say, OfCell of) {
        var cell = of.cell();
        return new OneCell(
                cell.crew().value(),
                cell.method().code(),
                say.it(cell.size().words()),
                say.it(of.lately().saying()));
    }

    private static String leftOut(Speech say, PaceSheet sheet) {
        if (sheet.leftOut().isEmpty()) return "";
        var each = sheet.leftOut().entrySet().stream()
                .sorted(Map.Entry.comparingByKey(Comparator.naturalOrder()))
                .map(one -> Saying.of(
                        "{0} {1}", one.getValue(), Saying.of(one.getKey().words())))
                .toList();
        return say.it("Left out: {0}.", Saying.list("; ", each));
    }
}
