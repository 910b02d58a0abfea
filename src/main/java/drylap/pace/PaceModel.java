package drylap.pace;

import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.RealMatrix;

/**
 * Install minutes as the labour table's times an effect of the method, one of the crew and one of both with the size, on a
 * logarithmic scale. Each effect is normal around nothing, so that where little was observed the labour table holds. Far-off
 * observations weigh less or nothing (Huber, cut off). How far effects spread is learnt from the same observations by expectation-maximisation.
 */
final class PaceModel {
    private static final int MOST_ROUNDS = 200;
    /** In standard deviations: beyond the first an observation pulls no harder, beyond the second not at all. */
    private static final double FAR = 2;

    private static final double TOO_FAR = 3.5;

    private final Map<Object, Integer> index = new LinkedHashMap<>();
    private final int[][] effects;
    private final double[] logs;
    private final double[] weights;
    private double[] mean = {};
    private RealMatrix covariance = new Array2DRowRealMatrix();
    private Variances variances;

    private PaceModel(List<TimedInstall> installs, Variances start) {
        variances = start;
        effects = installs.stream()
                .map(one -> parts(one.cell()).mapToInt(this::indexOf).toArray())
                .toArray(int[][]::new);
        logs = installs.stream().mapToDouble(TimedInstall::logRatio).toArray();
        weights = new double[logs.length];
        Arrays.fill(weights, 1);
    }

    /** All effects and spreads from these installs. */
    static PaceModel learnt(List<TimedInstall> installs) {
        PaceModel model = new PaceModel(installs, Variances.BELIEVED);
        for (int round = 0; round < MOST_ROUNDS; round++) {
            model.solve();
            Variances before = model.variances;
            model.variances = model.spread();
            model.weigh();
            if (model.variances.near(before)) break;
        }
        model.solve();
        return model;
    }

    /** The effects where the spreads are known and no observation is far off. */
    static PaceModel known(List<TimedInstall> installs, Variances variances) {
        PaceModel model = new PaceModel(installs, variances);
        model.solve();
        return model;
    }

    Variances variances() {
        return variances;
    }

    /** A logarithm with its standard error. */
    record LogFactor(double mean, double error) {
        double factor() {
            return Math.exp(mean);
        }
    }

    LogFactor of(Cell cell) {
        return of(Map.of(cell, 1.0));
    }

    /** The mean over cells by their shares, which sum to 1; of what was never observed only the spread is known. */
    LogFactor of(Map<Cell, Double> shares) {
        double[] row = new double[mean.length];
        Map<Object, Double> unseen = new HashMap<>();
        shares.forEach((cell, share) -> parts(cell).forEach(part -> {
            Integer at = index.get(part);
            if (at == null) unseen.merge(part, share, Double::sum);
            else row[at] += share;
        }));
        var vector = new ArrayRealVector(row, false);
        double variance = row.length == 0 ? 0 : vector.dotProduct(covariance.operate(vector));
        for (var one : unseen.entrySet()) variance += one.getValue() * one.getValue() * variance(one.getKey());
        double sum = row.length == 0 ? 0 : vector.dotProduct(new ArrayRealVector(mean, false));
        return new LogFactor(sum, Math.sqrt(variance));
    }

    private static java.util.stream.Stream<Object> parts(Cell cell) {
        return java.util.stream.Stream.of(cell.method(), cell.crew(), cell);
    }

    private int indexOf(Object part) {
        return index.computeIfAbsent(part, _ -> index.size());
    }

    private double variance(Object part) {
        if (part instanceof Cell) return variances.cell();
        return part instanceof drylap.assembly.Method ? variances.method() : variances.crew();
    }

    /** Henderson's mixed model equations: precisions of the observations and of the effects add up. */
    private void solve() {
        int size = index.size();
        double[][] precision = new double[size][size];
        double[] pull = new double[size];
        index.forEach((part, at) -> precision[at][at] = 1 / variance(part));
        for (int i = 0; i < logs.length; i++) {
            double weight = weights[i] / variances.noise();
            for (int one : effects[i]) {
                pull[one] += weight * logs[i];
                for (int other : effects[i]) precision[one][other] += weight;
            }
        }
        if (size == 0) return;
        covariance = new CholeskyDecomposition(new Array2DRowRealMatrix(precision, false))
                .getSolver()
                .getInverse();
        mean = covariance.operate(pull);
    }

    private Variances spread() {
        Map<Class<?>, double[]> sums = new HashMap<>();
        index.forEach((part, at) -> {
            double[] sum = sums.computeIfAbsent(part.getClass(), _ -> new double[2]);
            sum[0] += mean[at] * mean[at] + covariance.getEntry(at, at);
            sum[1]++;
        });
        return new Variances(
                drawn(sums, drylap.assembly.Method.class, Variances.BELIEVED.method()),
                drawn(sums, drylap.kernel.CrewId.class, Variances.BELIEVED.crew()),
                drawn(sums, Cell.class, Variances.BELIEVED.cell()),
                noise());
    }

    private static double drawn(Map<Class<?>, double[]> sums, Class<?> kind, double believed) {
        double[] sum = sums.getOrDefault(kind, new double[2]);
        return Variances.drawn(sum[0], sum[1], believed);
    }

    private double noise() {
        double squares = 0;
        int heard = 0;
        for (int i = 0; i < logs.length; i++) {
            double rest = rest(i);
            if (weights[i] > 0) heard++;
            squares += weights[i] * (rest * rest + fitVariance(i));
        }
        return Variances.drawn(squares, heard, Variances.BELIEVED.noise());
    }

    private void weigh() {
        double sigma = Math.sqrt(variances.noise());
        for (int i = 0; i < logs.length; i++) {
            double far = Math.abs(rest(i)) / sigma;
            weights[i] = far > TOO_FAR ? 0 : FAR / Math.max(FAR, far);
        }
    }

    private double rest(int install) {
        double rest = logs[install];
        for (int effect : effects[install]) rest -= mean[effect];
        return rest;
    }

    private double fitVariance(int install) {
        double variance = 0;
        for (int one : effects[install]) for (int other : effects[install]) variance += covariance.getEntry(one, other);
        return variance;
    }
}
