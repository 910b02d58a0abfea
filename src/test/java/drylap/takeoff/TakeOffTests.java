package drylap.takeoff;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import drylap.assembly.Approach;
import drylap.assembly.Frame;
import drylap.assembly.Method;
import drylap.assembly.SecondLayer;
import drylap.kernel.FacadeId;
import drylap.kernel.OpeningId;
import drylap.kernel.Rule;
import drylap.kernel.Rules;
import drylap.kernel.SiteId;
import drylap.sites.Opening;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;

/**
 * A rough opening of 914 by 1524 mm (36 by 60 in), worked by hand with strips of 9 in (228.6 mm). Rules: apron, rough opening and
 * both jamb flashings (AAMA 2400-10 Note 3); jamb flashing, from the apron's lower edge to half an inch below the head flashing's
 * top, and head flashing, an inch past it at each end (from memory of ASTM E2112 and AAMA 2400); pan, 6 in up each jamb (trade
 * articles); fasteners, at both ends of a flange and at most 16 in apart (from memory of ASTM E2112).
 *
 * <pre>
 * apron      914 + 2 x 228.6                      1371.2
 * pan        914 + 2 x 152.4                      1218.8
 * jamb       228.6 + 1524 + 228.6 - 12.7          1968.5, twice
 * head       1371.2 + 2 x 25.4                    1422.0
 * fasteners  914 / 406.4: 3 gaps, 4; 1524 / 406.4: 4 gaps, 5; together 2 x 4 + 2 x 5 = 18
 * bed        drained 2 x 1524 + 914 = 3962; four sides 2 x 1524 + 2 x 914 = 4876
 * heads      2 x 1524 = 3048 over the fasteners of the jamb flanges, where a method has it
 * sealant    pi/4 x 9.525^2 = 71.2557 mm2: 7010 mm take 499.50 ml
 * </pre>
 */
class TakeOffTests {
    private static final Rules RULES = Rules.STANDARD;

    private static Opening opening(Method method, Approach approach, int done) {
        return new Opening(
                new OpeningId("Q1"),
                new FacadeId(new SiteId("quay"), "N"),
                1,
                914,
                1524,
                Frame.WOOD,
                method,
                approach,
                SecondLayer.TUCK,
                LocalDate.of(2026, 4, 13),
                false,
                0,
                done,
                null);
    }

    private static Strip across(Strip.Kind kind, double lengthMm, double pastMm) {
        return new Strip(new OpeningId("Q1"), kind, 228.6, lengthMm, pastMm, pastMm + 914);
    }

    private static Strip jamb(double widthMm) {
        return new Strip(new OpeningId("Q1"), Strip.Kind.JAMB, widthMm, 1968.5, 228.6, 228.6 + 1524);
    }

    @Test
    void a_drained_opening_by_method_a1_takes_what_was_worked_by_hand() {
        OpeningTakeOff all = TakeOff.of(opening(Method.A1, Approach.DRAINAGE, 0), RULES);

        assertThat(all.strips())
                .containsExactly(
                        across(Strip.Kind.APRON, 1371.2, 228.6),
                        across(Strip.Kind.PAN, 1218.8, 152.4),
                        jamb(228.6),
                        jamb(228.6),
                        across(Strip.Kind.HEAD, 1422.0, 254.0));
        assertThat(all.panCorners()).isEqualTo(2);
        assertThat(all.fasteners()).isEqualTo(18);
        assertThat(all.beadMm()).isEqualTo(7010);
        assertThat(all.sealantMl()).isCloseTo(499.50, within(0.01));
        assertThat(all.windows()).isEqualTo(1);
    }

    @Test
    void a_bed_with_a_line_of_its_own_is_laid_once() {
        assertThat(TakeOff.of(opening(Method.A, Approach.DRAINAGE, 0), RULES).beadMm())
                .isEqualTo(7010);
    }

    @Test
    void the_barrier_approach_seals_four_sides_and_has_no_pan() {
        OpeningTakeOff all = TakeOff.of(opening(Method.B1, Approach.BARRIER, 0), RULES);

        assertThat(all.beadMm()).isEqualTo(4876);
        assertThat(all.panCorners()).isZero();
        assertThat(all.strips()).extracting(Strip::kind).doesNotContain(Strip.Kind.PAN);
    }

    /** Line 5 sets the window; what is left are the beads over its jamb flanges, and jamb and head flashing. */
    @Test
    void what_is_on_already_is_not_taken_again() {
        OpeningTakeOff left = TakeOff.of(opening(Method.A1, Approach.DRAINAGE, 5), RULES);

        assertThat(left.strips())
                .extracting(Strip::kind)
                .containsExactly(Strip.Kind.JAMB, Strip.Kind.JAMB, Strip.Kind.HEAD);
        assertThat(left.beadMm()).isEqualTo(3048);
        assertThat(left.windows() + left.fasteners() + left.panCorners()).isZero();
    }

    @Test
    void strips_of_another_width_and_a_thicker_bead_are_the_contractors_own() {
        Rules own = RULES.with(Rule.JAMB_FLASHING_MM, 304.8).with(Rule.BEAD_MM, 10);

        OpeningTakeOff all = TakeOff.of(opening(Method.A1, Approach.DRAINAGE, 0), own);

        assertThat(all.strips())
                .contains(across(Strip.Kind.APRON, 914 + 2 * 304.8, 304.8))
                .contains(jamb(304.8));
        assertThat(all.sealantMl()).isCloseTo(Math.PI * 25 * 7.010, within(0.01));
    }
}
