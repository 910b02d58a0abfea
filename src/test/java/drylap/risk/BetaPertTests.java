package drylap.risk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.stream.DoubleStream;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.simple.RandomSource;
import org.apache.commons.statistics.distribution.ContinuousDistribution;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.apache.commons.statistics.distribution.TriangularDistribution;
import org.junit.jupiter.api.Test;

/** Rows 53 to 57 of the table of check values: course notes on PERT, and what the beta distribution gives. */
class BetaPertTests {
    private static final BetaPert SKEWED = new BetaPert(3, 5, 10);

    /** Activities of the course network; 2-3 is a dummy of no length. */
    private static final BetaPert[] NETWORK = {
        new BetaPert(2, 5, 8), // 1-2
        new BetaPert(1, 4, 7), // 1-3
        new BetaPert(2, 4, 6), // 2-4
        new BetaPert(5, 7, 12), // 2-6
        new BetaPert(3, 5, 10), // 3-4
        new BetaPert(3, 6, 9), // 3-5
        new BetaPert(4, 6, 10), // 4-5
        new BetaPert(2, 5, 8), // 4-6
        new BetaPert(2, 4, 6) // 5-6
    };

    private static final int[] CRITICAL = {0, 4, 6, 8};

    /** Row 53, published in the notes: 20.83 days. */
    @Test
    void the_course_network_takes_20_83_days_by_its_means() {
        assertThat(through(Arrays.stream(NETWORK).mapToDouble(BetaPert::mean).toArray()))
                .isCloseTo(20.83, within(0.005));
    }

    /** Row 54, computed from the published formula, with the textbook's variance of the critical path. */
    @Test
    void the_critical_path_scatters_as_the_textbook_says() {
        double variance = Arrays.stream(CRITICAL)
                .mapToDouble(one -> Math.pow((NETWORK[one].most() - NETWORK[one].least()) / 6, 2))
                .sum();
        double mean =
                Arrays.stream(CRITICAL).mapToDouble(one -> NETWORK[one].mean()).sum();
        var normal = NormalDistribution.of(mean, Math.sqrt(variance));

        assertThat(normal.getStandardDeviation()).isCloseTo(1.9508, within(1e-3));
        assertThat(normal.cumulativeProbability(22)).isCloseTo(0.7251, within(1e-3));
        assertThat(normal.inverseCumulativeProbability(0.8)).isCloseTo(22.475, within(1e-3));
    }

    /** Row 55, by simulation elsewhere (400,000 draws): paths that merge take longer than the longest of their means. */
    @Test
    void eighty_of_a_hundred_trials_of_the_network_are_through_in_22_91_days() {
        var samplers = samplers(20261126);
        double[] ends = DoubleStream.generate(() -> through(Arrays.stream(samplers)
                        .mapToDouble(ContinuousDistribution.Sampler::sample)
                        .toArray()))
                .limit(200_000)
                .sorted()
                .toArray();

        assertThat(ends[(int) (0.8 * ends.length)]).isCloseTo(22.91, within(0.05));
        assertThat(Arrays.stream(ends).average().orElseThrow()).isCloseTo(21.18, within(0.05));
    }

    /** Row 56, computed from the beta distribution. */
    @Test
    void a_skewed_duration_has_the_betas_mean_variance_and_quantiles() {
        assertThat(SKEWED.mean()).isCloseTo(5.5, within(1e-9));
        assertThat(SKEWED.variance()).isCloseTo(1.6071, within(1e-3));
        assertThat(SKEWED.quantile(0.5)).isCloseTo(5.383, within(1e-3));
        assertThat(SKEWED.quantile(0.8)).isCloseTo(6.626, within(1e-3));
    }

    /** Row 57: a triangle over the same three points says more than half a unit more. */
    @Test
    void a_triangle_is_another_distribution() {
        double triangle = TriangularDistribution.of(3, 5, 10).inverseCumulativeProbability(0.8);

        assertThat(triangle).isCloseTo(7.3542, within(1e-4));
        assertThat(SKEWED.quantile(0.8)).isLessThan(triangle - 0.5);
    }

    /** The closed forms, within three standard errors of the draws. */
    @Test
    void draws_reproduce_the_mean_the_variance_and_the_quantiles() {
        int draws = 100_000;
        var sampler = SKEWED.sampler(RandomSource.XO_SHI_RO_256_PP.create(7L));
        double[] drawn = DoubleStream.generate(sampler::sample).limit(draws).toArray();
        double mean = Arrays.stream(drawn).average().orElseThrow();
        double[] squares =
                Arrays.stream(drawn).map(value -> Math.pow(value - 5.5, 2)).toArray();
        double variance = Arrays.stream(squares).average().orElseThrow();
        double errorOfVariance = Math.sqrt(Arrays.stream(squares)
                        .map(square -> Math.pow(square - variance, 2))
                        .average()
                        .orElseThrow()
                / draws);
        double below = Arrays.stream(drawn)
                        .filter(value -> value <= SKEWED.quantile(0.8))
                        .count()
                / (double) draws;

        assertThat(mean).isCloseTo(5.5, within(3 * Math.sqrt(SKEWED.variance() / draws)));
        assertThat(variance).isCloseTo(SKEWED.variance(), within(3 * errorOfVariance));
        assertThat(below).isCloseTo(0.8, within(3 * Math.sqrt(0.8 * 0.2 / draws)));
    }

    @Test
    void without_a_spread_every_draw_is_the_likeliest() {
        UniformRandomProvider source = RandomSource.XO_SHI_RO_256_PP.create(1L);

        assertThat(new BetaPert(2, 2, 2).sampler(source).sample()).isEqualTo(2);
        assertThat(new BetaPert(2, 2, 2).quantile(0.9)).isEqualTo(2);
    }

    @Test
    void points_out_of_order_are_refused() {
        assertThatThrownBy(() -> new BetaPert(3, 2, 5)).hasMessageContaining("not in order");
    }

    private static ContinuousDistribution.Sampler[] samplers(long seed) {
        UniformRandomProvider source = RandomSource.XO_SHI_RO_256_PP.create(seed);
        return Arrays.stream(NETWORK).map(one -> one.sampler(source)).toArray(ContinuousDistribution.Sampler[]::new);
    }

    private static double through(double[] days) {
        double second = days[0];
        double third = Math.max(days[1], second);
        double fourth = Math.max(second + days[2], third + days[4]);
        double fifth = Math.max(third + days[5], fourth + days[6]);
        return Math.max(Math.max(second + days[3], fourth + days[7]), fifth + days[8]);
    }
}
