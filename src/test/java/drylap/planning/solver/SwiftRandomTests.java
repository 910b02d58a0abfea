package drylap.planning.solver;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SwiftRandomTests {
    private static final int DRAWS = 200_000;

    private final Random random = new SwiftRandom(7);

    /** Pearson's chi-squared test; the bounds are mean and five standard deviations of the distribution, which are n - 1 and the root of 2(n - 1). */
    @ParameterizedTest
    @ValueSource(ints = {2, 3, 10, 100, 1_000, 2_880})
    void numbers_are_even_up_to_their_bound(int bound) {
        int[] drawn = new int[bound];
        for (int i = 0; i < DRAWS; i++) drawn[random.nextInt(bound)]++;
        double expected = (double) DRAWS / bound;
        double chi = 0;
        for (int count : drawn) chi += (count - expected) * (count - expected) / expected;
        assertThat(Math.abs(chi - (bound - 1))).isLessThan(5 * Math.sqrt(2.0 * (bound - 1)));
    }

    @Test
    void coins_and_fractions_are_even() {
        int heads = 0;
        double sum = 0;
        for (int i = 0; i < DRAWS; i++) {
            if (random.nextBoolean()) heads++;
            sum += random.nextDouble();
        }
        assertThat((double) heads / DRAWS).isBetween(0.494, 0.506);
        assertThat(sum / DRAWS).isBetween(0.4967, 0.5033); // five times the root of 1/12n
    }

    @Test
    void the_same_seed_draws_the_same() {
        Random other = new SwiftRandom(7);
        for (int i = 0; i < 1_000; i++) assertThat(other.nextInt(97)).isEqualTo(random.nextInt(97));
    }

    @Test
    void there_is_no_number_below_zero() {
        assertThatThrownBy(() -> random.nextInt(0)).isInstanceOf(IllegalArgumentException.class);
    }
}
