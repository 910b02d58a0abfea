package drylap.climate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.BitSet;
import java.util.function.Predicate;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.simple.RandomSource;
import org.junit.jupiter.api.Test;

/** Simulated rain against the closed forms, within three standard errors; row numbers are those of the table of check values. */
class RainChainTests {
    private static final int TRIALS = 40_000;

    /** Row 42: at least one of eight hours of 0.2 each is wet. */
    @Test
    void rain_in_eight_hours_alike_comes_as_often_as_the_closed_form_says() {
        double[] hours = new double[8];
        Arrays.fill(hours, 0.2);

        near(share(hours, 0, wet -> !wet.isEmpty()), 0.832228);
        near(share(hours, 0.3, wet -> !wet.isEmpty()), 0.721658);
        near(share(hours, 0.6, wet -> !wet.isEmpty()), 0.553723);
        near(share(hours, 0.8, wet -> !wet.isEmpty()), 0.398842);
        near(share(hours, 1, wet -> !wet.isEmpty()), 0.2);
    }

    /** Row 44: hours with chances of their own. */
    @Test
    void rain_in_hours_of_different_chances_comes_as_often_as_the_closed_form_says() {
        near(share(new double[] {0.1, 0.2, 0.3, 0.2}, 0.6, wet -> !wet.isEmpty()), 0.365162);
    }

    @Test
    void each_hour_keeps_the_chance_that_it_was_told() {
        double[] hours = {0.1, 0.7, 0.05, 0.9, 0, 1, 0.4};

        for (int hour = 0; hour < hours.length; hour++) {
            int at = hour;
            near(share(hours, 0.6, wet -> wet.get(at)), hours[hour]);
        }
    }

    /** Rows 47 and 49, Tel Aviv by Gabriel and Neumann: 0.662 after wet, 0.250 after dry; here by the same share and correlation. */
    @Test
    void wet_and_dry_spells_of_tel_aviv_are_as_long_as_published() {
        double[] days = new double[400_000];
        Arrays.fill(days, 0.42517);
        BitSet wet = drawn(days, 0.662 - 0.250, RandomSource.XO_SHI_RO_256_PP.create(3L));
        int spells = 0;
        for (int day = 1; day < days.length; day++) if (wet.get(day) && !wet.get(day - 1)) spells++;
        double share = wet.cardinality() / (double) days.length;
        double length = wet.cardinality() / (double) spells;
        // a spell of mean m lasts geometrically: variance m (m - 1)
        double error = Math.sqrt(2.9586 * 1.9586 / spells);

        assertThat(length).isCloseTo(2.9586, within(3 * error));
        // neighbours that correlate by r make a mean of n as uncertain as one of n (1 - r) / (1 + r) alone
        assertThat(share).isCloseTo(0.42517, within(3 * Math.sqrt(0.42517 * 0.57483 / days.length * (1.412 / 0.588))));
    }

    /** The hourly chance of which 24 make the day's. */
    @Test
    void a_chance_told_for_a_period_is_spread_over_its_hours() {
        double hourly = RainChain.hourly(0.45, 24, 0.6);
        double[] hours = new double[24];
        Arrays.fill(hours, hourly);

        near(share(hours, 0.6, wet -> !wet.isEmpty()), 0.45);
        assertThat(hourly).isBetween(0.03, 0.08);
    }

    private static void near(double share, double chance) {
        assertThat(share).isCloseTo(chance, within(3 * Math.sqrt(chance * (1 - chance) / TRIALS) + 1e-12));
    }

    private static double share(double[] hours, double rho, Predicate<BitSet> what) {
        UniformRandomProvider source = RandomSource.XO_SHI_RO_256_PP.create(11L);
        int hits = 0;
        for (int trial = 0; trial < TRIALS; trial++) if (what.test(drawn(hours, rho, source))) hits++;
        return hits / (double) TRIALS;
    }

    private static BitSet drawn(double[] hours, double rho, UniformRandomProvider source) {
        double[] lots = new double[hours.length];
        Arrays.setAll(lots, _ -> source.nextDouble());
        BitSet wet = new BitSet();
        RainChain.of(hours, rho).draw(lots, wet);
        return wet;
    }
}
