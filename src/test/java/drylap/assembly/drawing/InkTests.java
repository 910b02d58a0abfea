package drylap.assembly.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import drylap.assembly.LapSection.Colours;
import java.util.regex.Pattern;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Relative luminance and contrast ratio as WCAG 2.2 defines them; 4.5 : 1 is success criterion 1.4.3. */
class InkTests {
    @ParameterizedTest
    @CsvSource({
        "TEXT,PAPER",
        "MUTED,PAPER",
        "FAULT,PAPER",
        "PAPER,FRAME",
        "PAPER,FAULT",
        "PAPER,SAFE",
        "PAPER,TEXT",
        "TEXT,WALL"
    })
    void words_stand_out_from_what_is_behind_them_by_light_and_by_dark(Ink ink, Ink behind) {
        for (int scheme = 1; scheme <= 2; scheme++)
            assertThat(contrast(hex(ink, scheme), hex(behind, scheme))).isGreaterThanOrEqualTo(4.5);
    }

    @ParameterizedTest
    @CsvSource({"#000000,#ffffff,21", "#767676,#ffffff,4.54", "#ffffff,#ffffff,1"})
    void the_ratio_agrees_with_known_pairs(String one, String other, double ratio) {
        assertThat(contrast(one, other)).isCloseTo(ratio, org.assertj.core.api.Assertions.within(0.01));
    }

    private static String hex(Ink ink, int scheme) {
        var colours = Pattern.compile("light-dark\\((#\\w+),(#\\w+)\\)").matcher(ink.on(Colours.PAGE));
        assertThat(colours.find()).isTrue();
        return colours.group(scheme);
    }

    private static double contrast(String one, String other) {
        double high = Math.max(luminance(one), luminance(other));
        double low = Math.min(luminance(one), luminance(other));
        return (high + 0.05) / (low + 0.05);
    }

    private static double luminance(String hex) {
        return 0.2126 * linear(hex, 1) + 0.7152 * linear(hex, 3) + 0.0722 * linear(hex, 5);
    }

    private static double linear(String hex, int at) {
        double share = Integer.parseInt(hex.substring(at, at + 2), 16) / 255.0;
        return share <= 0.04045 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
    }
}
