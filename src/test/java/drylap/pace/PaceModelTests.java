package drylap.pace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import drylap.assembly.Method;
import drylap.kernel.CrewId;
import drylap.kernel.OpeningId;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;
import org.junit.jupiter.api.Test;

/** Against closed forms, the marginal form of the same model, and truths that were simulated. */
class PaceModelTests {
    private static final double PLANNED = 90;

    private final Random random = new Random(20260413);

    private static Cell cell(int crew, Method method, SizeClass size) {
        return new Cell(new CrewId("c" + crew), method, size);
    }

    private static TimedInstall install(Cell cell, double log) {
        return new TimedInstall(
                new OpeningId("o"), cell, LocalDate.of(2026, 4, 13), PLANNED * Math.exp(log), (int) PLANNED);
    }

    @Test
    void without_observations_the_labour_table_holds() {
        var nothing = PaceModel.learnt(List.of()).of(cell(1, Method.B, SizeClass.SMALL));

        assertThat(nothing.factor()).isEqualTo(1);
        assertThat(nothing.error()).isCloseTo(Math.sqrt(0.01 + 0.0144 + 0.0036), within(1e-12));
    }

    /** The textbook posterior of a normal mean with known variances: n t² / (n t² + s²) of the raw mean. */
    @Test
    void one_cell_is_drawn_to_the_table_by_the_share_that_is_noise() {
        double t2 = 0.02;
        double s2 = 0.05;
        var cell = cell(1, Method.B, SizeClass.SMALL);
        var logs = List.of(0.31, 0.12, 0.27, 0.05);
        var model = PaceModel.known(
                logs.stream().map(log -> install(cell, log)).toList(), new Variances(1e-14, 1e-14, t2, s2));

        double raw = logs.stream().mapToDouble(Double::doubleValue).average().orElseThrow();
        assertThat(model.of(cell).mean()).isCloseTo(4 * t2 / (4 * t2 + s2) * raw, within(1e-9));
        assertThat(model.of(cell).error()).isCloseTo(Math.sqrt(t2 * s2 / (4 * t2 + s2)), within(1e-9));
    }

    /** E[u | y] = G Z' (Z G Z' + R)⁻¹ y, which shares no equation with the model's own (they are equivalent: Henderson 1950). */
    @Test
    void crossed_effects_agree_with_the_marginal_form() {
        var variances = new Variances(0.02, 0.03, 0.01, 0.05);
        List<TimedInstall> installs = new ArrayList<>();
        for (int i = 0; i < 25; i++)
            installs.add(install(
                    cell(random.nextInt(3), Method.values()[random.nextInt(4)], SizeClass.values()[random.nextInt(3)]),
                    0.2 * random.nextGaussian()));
        var model = PaceModel.known(installs, variances);

        for (var cell : installs.stream().map(TimedInstall::cell).collect(Collectors.toSet())) {
            double[] expected = marginal(installs, cell, variances);
            assertThat(model.of(cell).mean()).isCloseTo(expected[0], within(1e-9));
            assertThat(model.of(cell).error()).isCloseTo(expected[1], within(1e-9));
        }
    }

    private static double[] marginal(List<TimedInstall> installs, Cell cell, Variances v) {
        int n = installs.size();
        RealMatrix y = new Array2DRowRealMatrix(n, 1);
        RealMatrix cov = MatrixUtils.createRealIdentityMatrix(n).scalarMultiply(v.noise());
        RealMatrix to = new Array2DRowRealMatrix(1, n);
        for (int i = 0; i < n; i++) {
            y.setEntry(i, 0, installs.get(i).logRatio());
            to.setEntry(0, i, shared(installs.get(i).cell(), cell, v));
            for (int j = 0; j < n; j++)
                cov.addToEntry(
                        i, j, shared(installs.get(i).cell(), installs.get(j).cell(), v));
        }
        RealMatrix inverse = new LUDecomposition(cov).getSolver().getInverse();
        double variance = shared(cell, cell, v)
                - to.multiply(inverse).multiply(to.transpose()).getEntry(0, 0);
        return new double[] {to.multiply(inverse).multiply(y).getEntry(0, 0), Math.sqrt(variance)};
    }

    private static double shared(Cell one, Cell other, Variances v) {
        return (one.method() == other.method() ? v.method() : 0)
                + (one.crew().equals(other.crew()) ? v.crew() : 0)
                + (one.equals(other) ? v.cell() : 0);
    }

    /** One contractor: effects that nobody knows, and installs in very unequal numbers, as a season has them. */
    private final class Truth {
        final Map<Cell, Double> logs = new HashMap<>();
        final List<TimedInstall> installs = new ArrayList<>();

        Truth(double noise, double outliers) {
            Map<Object, Double> effects = new HashMap<>();
            for (int crew = 0; crew < 5; crew++)
                for (Method method : Set.of(Method.B, Method.B1))
                    for (SizeClass size : SizeClass.values()) add(effects, cell(crew, method, size), noise, outliers);
        }

        private void add(Map<Object, Double> effects, Cell cell, double noise, double outliers) {
            double log = effects.computeIfAbsent(cell.method(), _ -> 0.12 * random.nextGaussian())
                    + effects.computeIfAbsent(cell.crew(), _ -> 0.15 * random.nextGaussian())
                    + 0.05 * random.nextGaussian();
            logs.put(cell, log);
            for (int i = random.nextInt(1, 9); i > 0; i--)
                installs.add(install(
                        cell, log + noise * random.nextGaussian() + (random.nextDouble() < outliers ? 1.2 : 0)));
        }

        double raw(Cell cell) {
            return installs.stream()
                    .filter(one -> one.cell().equals(cell))
                    .mapToDouble(TimedInstall::logRatio)
                    .average()
                    .orElseThrow();
        }
    }

    @Test
    void simulated_truths_lie_in_the_stated_ranges_and_nearer_than_the_raw_means() {
        int cells = 0;
        int covered = 0;
        double shrunk = 0;
        double raw = 0;
        for (int contractor = 0; contractor < 60; contractor++) {
            var truth = new Truth(0.22, 0);
            var model = PaceModel.learnt(truth.installs);
            for (var cell : truth.logs.entrySet()) {
                var estimate = model.of(cell.getKey());
                double off = estimate.mean() - cell.getValue();
                cells++;
                if (Math.abs(off) <= 1.96 * estimate.error()) covered++;
                shrunk += off * off;
                raw += Math.pow(truth.raw(cell.getKey()) - cell.getValue(), 2);
            }
        }
        // 1,800 cells in clusters: 95 % to within three points either way
        assertThat(covered / (double) cells).isBetween(0.92, 0.98);
        assertThat(Math.sqrt(shrunk / raw)).isLessThan(0.75);
    }

    @Test
    void the_spreads_are_learnt_from_many_installs() {
        var truths = new LinkedHashSet<Variances>();
        for (int i = 0; i < 30; i++)
            truths.add(PaceModel.learnt(new Truth(0.3, 0).installs).variances());

        double noise = truths.stream().mapToDouble(Variances::noise).average().orElseThrow();
        assertThat(Math.sqrt(noise)).isBetween(0.27, 0.31);
    }

    /** One install in twelve that took three times as long moves the raw mean by a tenth, and the estimate hardly. */
    @Test
    void far_off_installs_do_not_poison_the_estimate() {
        double robust = 0;
        double raw = 0;
        int cells = 0;
        for (int i = 0; i < 40; i++) {
            var truth = new Truth(0.15, 1 / 12.0);
            var model = PaceModel.learnt(truth.installs);
            for (var cell : truth.logs.entrySet()) {
                robust += model.of(cell.getKey()).mean() - cell.getValue();
                raw += truth.raw(cell.getKey()) - cell.getValue();
                cells++;
            }
        }
        assertThat(raw / cells).isGreaterThan(0.08);
        assertThat(robust / cells).isLessThan(0.05);
    }
}
