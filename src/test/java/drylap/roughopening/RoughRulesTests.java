package drylap.roughopening;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import drylap.kernel.Rule;
import drylap.kernel.Rules;
import drylap.roughopening.RoughVerdict.Finding;
import drylap.roughopening.RoughVerdict.Grade;
import java.math.BigDecimal;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A rough opening of 36 1/2 by 48 1/2 inches for a frame of 36 by 48. Tolerances are those that {@link Rule} names with their sources: plumb and level 1/16 in over 2 ft
 * and 1/8 in over 4 ft, diagonals 1/8 in (trade guides, a window maker's dimension guide); the least gap is common practice, no source.
 */
class RoughRulesTests {
    static final int WIDTH = 927;
    static final int HEIGHT = 1_232;

    /** 914.3 and 1219.3 mm of frame with the standard clearance of 12.7 mm. */
    static Map<RoughPlace, BigDecimal> square() {
        Map<RoughPlace, BigDecimal> sizes = new EnumMap<>(RoughPlace.class);
        for (RoughPlace place : RoughPlace.values()) sizes.put(place, BigDecimal.ZERO);
        for (var place : List.of(RoughPlace.WIDTH_SILL, RoughPlace.WIDTH_MIDDLE, RoughPlace.WIDTH_HEAD))
            sizes.put(place, BigDecimal.valueOf(WIDTH));
        for (var place : List.of(RoughPlace.HEIGHT_LEFT, RoughPlace.HEIGHT_MIDDLE, RoughPlace.HEIGHT_RIGHT))
            sizes.put(place, BigDecimal.valueOf(HEIGHT));
        // the root of 927² + 1232², by hand 1541.8
        sizes.put(RoughPlace.DIAGONAL_RISING, new BigDecimal("1541.8"));
        sizes.put(RoughPlace.DIAGONAL_FALLING, new BigDecimal("1541.8"));
        return sizes;
    }

    private static RoughSizes with(RoughPlace place, String millimetres) {
        var sizes = square();
        sizes.put(place, new BigDecimal(millimetres));
        return new RoughSizes(sizes);
    }

    private static RoughVerdict judged(RoughSizes sizes) {
        return RoughRules.judge(sizes, WIDTH, HEIGHT, Rules.STANDARD);
    }

    @Test
    void an_opening_as_designed_fits() {
        var verdict = judged(new RoughSizes(square()));
        assertThat(verdict.grade()).isEqualTo(Grade.FITS);
        assertThat(verdict.findings()).hasSize(6).allMatch(one -> !one.source().isBlank());
        assertThat(verdict.findings().getFirst().words())
                .contains("914.3 mm (36 in)", "6.4 mm (1/4 in) in all is the least");
    }

    @ParameterizedTest
    @CsvSource({
        // frame 914.3 and the least gap of 6.35: 920.65
        "WIDTH_HEAD, 920.7, FITS",
        "WIDTH_HEAD, 920.5, REPORT",
        // the most gap of 25.4: 939.7
        "WIDTH_SILL, 939.7, FITS",
        "WIDTH_SILL, 939.8, REPORT",
        // frame 1219.3 and the least gap: 1225.65
        "HEIGHT_LEFT, 1225.7, FITS",
        "HEIGHT_LEFT, 1225.5, REPORT",
        // diagonals 1/8 in, 3.175
        "DIAGONAL_RISING, 1544.9, FITS",
        "DIAGONAL_RISING, 1545.1, SHIM",
        // a jamb of 1232 is longer than 4 ft: 1/8 in
        "PLUMB_LEFT, 3.175, FITS",
        "PLUMB_RIGHT, 3.3, SHIM",
        // a sill of 927 is 317.4 beyond 2 ft of the 609.6 to 4 ft: 1.5875 and 0.5207 of 1.5875, which is 2.414
        "LEVEL_SILL, 2.45, FITS",
        "LEVEL_SILL, 2.5, SHIM"
    })
    void each_size_has_its_limit(RoughPlace place, String millimetres, Grade grade) {
        assertThat(judged(with(place, millimetres)).grade()).isEqualTo(grade);
    }

    @Test
    void what_both_jambs_lean_and_the_sill_drops_takes_room() {
        var sizes = square();
        sizes.put(RoughPlace.PLUMB_LEFT, BigDecimal.valueOf(9));
        sizes.put(RoughPlace.PLUMB_RIGHT, BigDecimal.valueOf(7));
        // 927 less 7 is 920, short of 920.65 by 0.65
        var verdict = judged(new RoughSizes(sizes));
        assertThat(verdict.grade()).isEqualTo(Grade.REPORT);
        assertThat(verdict.findings())
                .filteredOn(one -> one.grade() == Grade.REPORT)
                .singleElement()
                .extracting(Finding::words)
                .asString()
                .contains("too small by 0.");
        // one jamb that leans alone takes nothing that is known
        assertThat(judged(with(RoughPlace.PLUMB_LEFT, "9")).grade()).isEqualTo(Grade.SHIM);
        // 1232 less 7 is 1225, short of 1225.65
        assertThat(judged(with(RoughPlace.LEVEL_SILL, "7")).grade()).isEqualTo(Grade.REPORT);
    }

    @Test
    void the_rules_of_the_site_hold() {
        Rules strict = Rules.STANDARD.with(Rule.ROUGH_LEAST_GAP_MM, 13);
        assertThat(RoughRules.judge(new RoughSizes(square()), WIDTH, HEIGHT, strict)
                        .grade())
                .isEqualTo(Grade.REPORT);
        Rules loose = Rules.STANDARD.with(Rule.ROUGH_SQUARE_MM, 6.35);
        assertThat(RoughRules.judge(with(RoughPlace.DIAGONAL_RISING, "1547"), WIDTH, HEIGHT, loose)
                        .grade())
                .isEqualTo(Grade.FITS);
    }

    @Test
    void a_slip_of_the_tape_stands_out() {
        assertThat(new RoughSizes(square()).misfit()).isEmpty();
        assertThat(with(RoughPlace.DIAGONAL_FALLING, "1451.8").misfit())
                .hasValueSatisfying(why -> assertThat(why.words())
                        .contains("do not go with these widths and heights, which make 1542 mm"));
        // a parallelogram leaning by 40: its diagonals are the roots of 967² + 1232² and 887² + 1232²
        var leaning = square();
        leaning.put(RoughPlace.DIAGONAL_RISING, new BigDecimal("1566.2"));
        leaning.put(RoughPlace.DIAGONAL_FALLING, new BigDecimal("1518.1"));
        assertThat(new RoughSizes(leaning).misfit()).isEmpty();
    }

    @Test
    void what_is_missing_or_beyond_bounds_is_refused() {
        var sizes = square();
        sizes.remove(RoughPlace.WIDTH_HEAD);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new RoughSizes(sizes))
                .withMessage("Width at the head is not given; accepted: 100 to 30000 mm");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> with(RoughPlace.PLUMB_LEFT, "301"))
                .withMessage("Left jamb out of plumb, over its height is 301 mm; accepted: 0 to 300 mm");
    }

    @ParameterizedTest
    @CsvSource({"3.175, 3.2 mm (1/8 in)", "914.4, 914.4 mm (36 in)", "927.1, 927.1 mm (36 1/2 in)", "0, 0.0 mm (0 in)"})
    void lengths_are_said_in_both_units(double millimetres, String words) {
        assertThat(Inches.words(millimetres).words()).isEqualTo(words);
    }
}
