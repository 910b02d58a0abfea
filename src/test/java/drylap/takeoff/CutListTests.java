package drylap.takeoff;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

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
import org.junit.jupiter.api.Test;

class CutListTests {
    private static CutList cut(long roll, long... lengths) {
        return CutList.of(
                false,
                228.6,
                roll,
                IntStream.range(0, lengths.length)
                        .mapToObj(i -> new Strip(new OpeningId("Q" + i), Strip.Kind.APRON, 228.6, lengths[i]))
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

        assertThat(cut.rolls().stream().flatMap(roll -> roll.strips().stream()).map(strip -> strip.opening()))
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

    @Test
    void a_strip_longer_than_a_roll_is_refused_with_what_would_be_accepted() {
        assertThatThrownBy(() -> cut(1000, 1200))
                .hasMessageContaining("apron strip of Q0 is 1200 mm long and a roll 1000 mm")
                .hasMessageContaining("accepted: a roll that long or longer");
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
