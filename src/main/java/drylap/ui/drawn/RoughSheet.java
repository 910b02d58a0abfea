package drylap.ui.drawn;

import drylap.roughopening.RoughMeasurement;
import drylap.roughopening.RoughPlace;
import drylap.roughopening.RoughVerdict;
import drylap.speech.Speech;
import java.math.BigDecimal;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.List;

/**
 * A measured rough opening, in words.
 *
 * @param grade fits, shim or report
 * @param title what it comes to
 * @param meaning what is to be done
 * @param by who measured it and when
 * @param sizes each place with its size
 */
public record RoughSheet(
        String grade, String title, String meaning, String by, String note, List<Line> findings, List<String> sizes) {
    /** Said wherever people are sent to a rough opening. */
    public static final String CAUTION =
            "Measuring is work at an opening through which one can fall. This is never a statement that work at height is safe: the competent "
                    + "person on site decides; local codes and the window maker's instructions come first.";

    /** @param source where its limit comes from */
    public record Line(String grade, String words, String source) {}

    public static RoughSheet of(Speech say, RoughMeasurement measured, ZoneId zone) {
        var verdict = measured.verdict();
        return new RoughSheet(
                verdict.grade().code(),
                say.it(verdict.grade().words()),
                say.it(verdict.grade().meaning()),
                say.it("Measured by {0}, {1}", measured.person(), say.moment(measured.at(), zone)),
                measured.note(),
                verdict.findings().stream().map(one -> line(say, one)).toList(),
                Arrays.stream(RoughPlace.values())
                        .map(place -> "%s: %s mm".formatted(say.it(place.words()), plain(measured, place)))
                        .toList());
    }

    private static Line line(Speech say, RoughVerdict.Finding finding) {
        return new Line(finding.grade().code(), say.it(finding.saying()), say.it(finding.source()));
    }

    private static String plain(RoughMeasurement measured, RoughPlace place) {
        BigDecimal size = measured.sizes().millimetres().getOrDefault(place, BigDecimal.ZERO);
        return size.signum() == 0 ? "0" : size.stripTrailingZeros().toPlainString();
    }
}
