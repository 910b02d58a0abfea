package drylap.takeoff;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.ortools.Loader;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.Literal;
import drylap.kernel.OpeningId;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;

class CutListTests {
    private static final double LAP = 152.4;

    private static CutList cut(long roll, long... lengths) {
        return CutList.of(
                false,
                228.6,
                roll,
                LAP,
                IntStream.range(0, lengths.length)
                        .mapToObj(i ->
                                new Strip(new OpeningId("Q" + i), Strip.Kind.APRON, 228.6, lengths[i], 0, lengths[i]))
                        .toList());
    }

    /** S. Martello and P. Toth, Knapsack Problems, 1990, chapter 8, from memory; proved again by CP-SAT here. */
    @Test
    void nine_lengths_of_a_textbook_need_four_rolls() {
        long[] lengths = {70, 60, 50, 33, 33, 33, 11, 7, 3};

        CutList cut = cut(100, lengths);

        assertThat(cut.rolls()).hasSize(4);
        assertThat(cut.proved()).isTrue();
        assertThat(best(lengths, 100)).isEqualTo(List.of(4L, least(cut)));
    }

    @Test
    void rolls_and_what_is_left_on_the_last_are_those_of_a_general_solver() {
        Random random = new Random(7);
        for (int round = 0; round < 40; round++) {
            long[] lengths =
                    random.longs(3 + random.nextInt(8), 900, 2400).sorted().toArray();
            long roll = 4000 + random.nextInt(3000);

            CutList cut = cut(roll, lengths);

            assertThat(List.of((long) cut.rolls().size(), least(cut)))
                    .as("%s from rolls of %d", Arrays.toString(lengths), roll)
                    .isEqualTo(best(lengths, roll));
        }
    }

    @Test
    void every_strip_is_cut_once_and_no_roll_is_longer_than_it_is() {
        long[] lengths = new Random(3).longs(40, 1200, 2400).toArray();

        CutList cut = cut(22_860, lengths);

        assertThat(cut.rolls().stream()
                        .flatMap(roll -> roll.pieces().stream())
                        .map(piece -> piece.strip().opening()))
                .hasSize(40)
                .doesNotHaveDuplicates();
        assertThat(cut.rolls()).allMatch(roll -> roll.left() >= 0);
        assertThat(cut.rolls())
                .hasSize((int) Math.ceilDiv(Arrays.stream(lengths).sum(), 22_860L));
        assertThat(cut.offcutMm() + cut.restMm())
                .isEqualTo(
                        cut.rolls().size() * 22_860.0 - Arrays.stream(lengths).sum());
    }

    @Test
    void nothing_to_cut_takes_no_roll() {
        assertThat(cut(1000).rolls()).isEmpty();
    }

    /** 1200 mm from rolls of 1000 that lap by 152.4: 1000 + 352.4 = 1200 + 152.4. */
    @Test
    void a_strip_longer_than_a_roll_is_made_of_pieces_and_the_list_says_how() {
        CutList cut = cut(1000, 1200);

        assertThat(cut.cuts())
                .extracting(cuts -> cuts.cut().words())
                .containsExactly(
                        "1 × apron strip 1000 mm (39 3/8 in), piece 1 of 2",
                        "1 × apron strip 352 mm (13 7/8 in), piece 2 of 2");
        assertThat(cut.joints().orElseThrow().words())
                .contains("lap by 152 mm (6 in)", "the upper over the lower", "Common practice, no source")
                .doesNotContain("take longer rolls");
        assertThat(cut(1000, 900).joints()).isEmpty();
    }

    @Test
    void equal_cuts_and_rolls_that_are_cut_alike_are_told_once() {
        CutList cut = cut(4000, 1219, 1219, 1219, 1219, 1219, 1219, 1219);

        assertThat(cut.cuts())
                .extracting(cuts -> cuts.cut().words())
                .containsExactly("7 × apron strip 1219 mm (48 in)");
        assertThat(cut.alike())
                .extracting(rolls ->
                        "%s: %s".formatted(rolls.name().words(), rolls.saying().words()))
                .containsExactly(
                        "Rolls 1 to 2, each: 3 × apron strip 1219 mm (48 in)",
                        "Roll 3: 1 × apron strip 1219 mm (48 in) for Q6");
        assertThat(cut.alike().getFirst().openings(cut.alike().getFirst().cuts().getFirst()))
                .extracting(OpeningId::value)
                .containsExactly("Q0", "Q1", "Q2", "Q3", "Q4", "Q5");
    }

    /** Two of 34 go on a roll of 100, so that 400 take 200; by their sum alone, 13 600, it could be 136. */
    @Test
    void a_list_too_long_to_search_says_how_far_it_may_be_from_the_best() {
        CutList far = cut(100, LongStream.generate(() -> 34).limit(400).toArray());
        CutList near = cut(100, LongStream.generate(() -> 25).limit(400).toArray());

        assertThat(far.rolls()).hasSize(200);
        assertThat(far.saying().words()).endsWith("(a better way may exist; none takes fewer than 136 rolls)");
        assertThat(near.rolls()).hasSize(100);
        assertThat(near.saying().words())
                .endsWith("(no way takes fewer rolls; one that leaves a longer rest may exist)");
        assertThat(cut(100, 34, 34, 34).saying().words()).doesNotContain("(no way", "(a better");
    }

    /** More than half a roll each, so that no two share one: 400 rolls, though by their sum it could be 240. */
    @Test
    void pieces_longer_than_half_a_roll_bound_it_too() {
        assertThat(cut(100, LongStream.generate(() -> 60).limit(400).toArray()).fewest())
                .isEqualTo(400);
    }

    @Test
    void of_a_whole_site_every_strip_is_cut_once() {
        long[] lengths = new Random(5).longs(3_000, 1200, 2400).toArray();

        CutList cut = cut(22_860, lengths);

        assertThat(cut.rolls().stream()
                        .flatMap(roll -> roll.pieces().stream())
                        .map(piece -> piece.strip().opening()))
                .hasSize(3_000)
                .doesNotHaveDuplicates();
        assertThat(cut.rolls()).allMatch(roll -> roll.left() >= 0);
        assertThat(cut.rolls().size()).isBetween(cut.fewest(), cut.fewest() * 11 / 9 + 1);
        assertThat(cut.fewest())
                .isEqualTo((int) Math.ceilDiv(Arrays.stream(lengths).sum(), 22_860L));
    }

    private static long least(CutList cut) {
        return cut.rolls().stream()
                .mapToLong(roll -> Math.round(cut.rollMm() - roll.left()))
                .min()
                .orElse(0);
    }

    /** The fewest rolls, and with these the least that one of them has on it, by CP-SAT. */
    private static List<Long> best(long[] lengths, long roll) {
        Loader.loadNativeLibraries();
        for (int rolls = 1; ; rolls++) {
            CpModel model = new CpModel();
            LinearExpr[] on = loads(model, lengths, roll, rolls);
            model.minimize(on[0]);
            CpSolver solver = new CpSolver();
            solver.getParameters().setNumWorkers(1);
            if (solver.solve(model) == CpSolverStatus.OPTIMAL)
                return List.of((long) rolls, Math.round(solver.objectiveValue()));
        }
    }

    private static LinearExpr[] loads(CpModel model, long[] lengths, long roll, int rolls) {
        Literal[][] at = new Literal[rolls][lengths.length];
        LinearExpr[] on = new LinearExpr[rolls];
        for (int r = 0; r < rolls; r++) {
            for (int i = 0; i < lengths.length; i++) at[r][i] = model.newBoolVar("at_%d_%d".formatted(r, i));
            IntVar load = model.newIntVar(1, roll, "on_" + r);
            model.addEquality(load, LinearExpr.weightedSum(at[r], lengths));
            on[r] = LinearExpr.affine(load, 1, 0);
        }
        for (int i = 0; i < lengths.length; i++) {
            int strip = i;
            model.addExactlyOne(Arrays.stream(at).map(of -> of[strip]).toArray(Literal[]::new));
        }
        return on;
    }
}
