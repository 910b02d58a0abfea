package drylap.takeoff;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import drylap.kernel.OpeningId;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Strips of an opening of 914 by 1524 mm, worked by hand. Lap 152.4 mm: 6 in, the lap of the barrier at upright joints (IRC R703.2);
 * that strips lap as much, that the upper lies over the lower, and that a lap stays between the corners of the window and as far
 * from them as it is wide: common practice, no source.
 */
class JointsTests {
    private static final double LAP = 152.4;

    private static Strip strip(Strip.Kind kind, double lengthMm, double firstMm, double lastMm) {
        return new Strip(new OpeningId("Q1"), kind, 228.6, lengthMm, firstMm, lastMm);
    }

    private static Strip plain(double lengthMm) {
        return strip(Strip.Kind.APRON, lengthMm, 228.6, lengthMm - 228.6);
    }

    private static List<Double> lengths(Strip strip, double rollMm) {
        return Joints.pieces(strip, rollMm, LAP).stream().map(Piece::lengthMm).toList();
    }

    @Test
    void a_strip_as_long_as_a_roll_is_whole_and_one_a_millimetre_longer_is_two() {
        assertThat(Joints.pieces(plain(5000), 5000, LAP)).containsExactly(Piece.whole(plain(5000)));

        // the lap ends as far from the last corner as it is wide: 5001 - 228.6 - 152.4 = 4620; 4620 + 533.4 = 5001 +
        // 152.4
        assertThat(lengths(plain(5001), 5000)).containsExactly(4620.0, 533.4);
    }

    /** Last corner 1371.2 - 228.6 = 1142.6; the lap ends at 990.2 at the latest; 990.2 + 533.4 = 1371.2 + 152.4. */
    @Test
    void an_apron_keeps_its_joint_from_the_corner() {
        assertThat(lengths(strip(Strip.Kind.APRON, 1371.2, 228.6, 1142.6), 1000))
                .containsExactly(990.2, 533.4);
    }

    /** Three: 1000, then to 1752.6 - 152.4 = 1600.2 from 847.6, then the rest from 1447.8. */
    @Test
    void a_jamb_of_three_pieces_has_two_laps_between_its_corners() {
        List<Piece> pieces = Joints.pieces(strip(Strip.Kind.JAMB, 1968.5, 228.6, 1752.6), 1000, LAP);

        assertThat(pieces).extracting(Piece::lengthMm).containsExactly(1000.0, 752.6, 520.7);
        assertThat(pieces).extracting(Piece::number).containsExactly(1, 2, 3);
        assertThat(pieces).allMatch(piece -> piece.of() == 3 && piece.clear());
    }

    /** Corners 300 mm apart leave no place that is 152.4 mm from both and as wide again. */
    @Test
    void where_no_place_is_clear_of_the_corners_it_is_joined_all_the_same_and_says_so() {
        List<Piece> pieces = Joints.pieces(strip(Strip.Kind.APRON, 1100, 400, 700), 1000, LAP);

        assertThat(pieces).extracting(Piece::lengthMm).containsExactly(1000.0, 252.4);
        assertThat(pieces).noneMatch(Piece::clear);
        CutList cut = CutList.of(false, 228.6, 1000, LAP, List.of(strip(Strip.Kind.APRON, 1100, 400, 700)));
        assertThat(cut.joints().orElseThrow().words()).contains("nearer to a corner at Q1: take longer rolls");
    }

    @Test
    void a_roll_no_longer_than_a_lap_is_refused() {
        assertThatThrownBy(() -> Joints.pieces(plain(1000), 150, LAP))
                .hasMessageContaining("accepted: longer than the lap of 152.4 mm");
    }
}
