package drylap.assembly;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class DimensionsTests {
    /** AAMA 2400-10, Note 3: even with the outer edges of the jamb flashing. */
    @Test
    void an_apron_for_a_36_inch_opening_with_9_inch_strips_is_54_inches_long() {
        assertThat(Dimensions.apronLength(Length.inches(36), Length.inches(9)).inches())
                .isCloseTo(54, within(1e-9));
    }

    /** AAMA 2400-10, 5.7.3.3, which gives both units, rounded. */
    @Test
    void the_apron_ends_stay_free_for_9_inches_or_230_mm() {
        assertThat(Dimensions.APRON_FREE_END.inches()).isEqualTo(9, within(1e-9));
        assertThat(Dimensions.APRON_FREE_END.millimetres()).isCloseTo(230, within(2.0));
    }

    /** IRC R703.2: 2 in at horizontal laps, 6 in at upright joints; a code summary is known that swaps them. */
    @Test
    void barrier_laps_hold_from_2_inches_and_joints_from_6() {
        assertThat(Dimensions.horizontalLapHolds(Length.inches(2))).isTrue();
        assertThat(Dimensions.horizontalLapHolds(Length.inches(1.9))).isFalse();
        assertThat(Dimensions.jointLapHolds(Length.inches(6))).isTrue();
        assertThat(Dimensions.jointLapHolds(Length.inches(5.9))).isFalse();
    }

    /** From memory of ASTM E2112 and AAMA 2400. */
    @Test
    void jamb_flashing_runs_8_and_a_half_inches_up_for_a_9_inch_head_strip() {
        assertThat(Dimensions.jambFlashingAboveOpening(Length.inches(9)).inches())
                .isCloseTo(8.5, within(1e-9));
    }

    /** Common practice, no source. */
    @Test
    void aluminum_and_wood_want_a_pan_and_vinyl_may_do_without() {
        assertThat(Advice.of(Frame.ALUMINUM, Approach.BARRIER))
                .anyMatch(line -> line.words().contains("wants a sill pan"));
        assertThat(Advice.of(Frame.WOOD, Approach.BARRIER))
                .anyMatch(line -> line.words().contains("wants a sill pan"));
        assertThat(Advice.of(Frame.VINYL, Approach.BARRIER))
                .anyMatch(line -> line.words().contains("may do without a pan"));
    }
}
