package drylap.takeoff;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import drylap.kernel.OpeningId;
import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

/** Small strips in whole millimetres, so that every way to join them can be walked through. */
class JointsPropertyTests {
    @Property
    void pieces_of_a_strip_are_as_long_as_it_and_its_laps_and_as_few_as_can_be(
            @ForAll @IntRange(min = 1, max = 80) int length,
            @ForAll @IntRange(min = 8, max = 40) int roll,
            @ForAll @IntRange(min = 1, max = 7) int lap,
            @ForAll @IntRange(min = 0, max = 80) int one,
            @ForAll @IntRange(min = 0, max = 80) int other) {
        int first = Math.min(one, other);
        int last = Math.max(one, other);
        Strip strip = new Strip(new OpeningId("Q1"), Strip.Kind.JAMB, 228.6, length, first, last);

        List<Piece> pieces = Joints.pieces(strip, roll, lap);

        double sum = pieces.stream().mapToDouble(Piece::lengthMm).sum();
        assertThat(sum).isCloseTo(length + (pieces.size() - 1) * lap, within(1e-9));
        assertThat(pieces).allMatch(piece -> piece.lengthMm() <= roll && piece.lengthMm() > 0);
        if (length <= roll) {
            assertThat(pieces).hasSize(1);
            return;
        }
        int clear = fewest(length, roll, lap, first, last);
        assertThat(pieces).allMatch(piece -> piece.clear() == clear > 0);
        assertThat(pieces).hasSize(clear > 0 ? clear : fewest(length, roll, lap, -lap, length + lap));
    }

    /** The fewest pieces by walking through all ways, breadth first; 0 where there is none. Not by the rule of the code. */
    private static int fewest(int length, int roll, int lap, int firstCorner, int lastCorner) {
        int[] pieces = new int[length + 1]; // to a piece that ends there
        Arrays.fill(pieces, 0);
        ArrayDeque<Integer> ends = new ArrayDeque<>();
        for (int end = 1; end <= Math.min(roll, length); end++)
            if (allowed(end, length, lap, firstCorner, lastCorner)) {
                pieces[end] = 1;
                ends.add(end);
            }
        while (!ends.isEmpty()) {
            int start = ends.removeFirst();
            for (int end = start + 1; end <= Math.min(start - lap + roll, length); end++)
                if (start < length && pieces[end] == 0 && allowed(end, length, lap, firstCorner, lastCorner)) {
                    pieces[end] = pieces[start] + 1;
                    ends.add(end);
                }
        }
        return pieces[length];
    }

    /** The end of the strip; or a lap that is whole, and as far from both corners as it is wide. */
    private static boolean allowed(int end, int length, int lap, int firstCorner, int lastCorner) {
        return end == length || end - lap > 0 && end - lap >= firstCorner + lap && end <= lastCorner - lap;
    }
}
