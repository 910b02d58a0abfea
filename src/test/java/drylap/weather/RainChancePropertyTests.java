package drylap.weather;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;

/** Source: Fréchet's inequalities; a chain of hours that keeps their own chances can never leave them. */
class RainChancePropertyTests {
    @Property
    void persistent_rain_lies_between_the_likeliest_hour_and_independent_hours(
            @ForAll @Size(min = 1, max = 12) List<@DoubleRange(max = 1) Double> chances,
            @ForAll @DoubleRange(max = 1) double rho) {
        double[] hourly = chances.stream().mapToDouble(chance -> chance).toArray();
        double likeliest = chances.stream().mapToDouble(chance -> chance).max().orElseThrow();
        double dry = chances.stream().mapToDouble(chance -> 1 - chance).reduce(1, (a, b) -> a * b);
        assertThat(RainChance.persistent(rho, hourly)).isBetween(likeliest - 1e-9, 1 - dry + 1e-9);
    }

    /** The oracle follows the share of all weathers, wet ones too, and looks at what stayed dry throughout. */
    @Property
    void persistent_rain_is_what_a_walk_through_the_chain_leaves_dry(
            @ForAll @Size(min = 1, max = 12) List<@DoubleRange(min = 0.01, max = 0.99) Double> chances,
            @ForAll @DoubleRange(max = 1) double rho) {
        double neverWet = 1 - chances.getFirst();
        double dryNow = neverWet;
        for (int i = 1; i < chances.size(); i++) {
            double before = chances.get(i - 1);
            double now = chances.get(i);
            double spread = Math.sqrt(before * (1 - before) * now * (1 - now));
            double both = Math.min(before * now + rho * spread, Math.min(before, now));
            double dryAfterDry = (1 - before - now + both) / (1 - before);
            double dryAfterWet = (before - both) / before;
            neverWet *= dryAfterDry;
            dryNow = dryNow * dryAfterDry + (1 - dryNow) * dryAfterWet;
            assertThat(dryNow).as("the hour keeps its own chance").isCloseTo(1 - now, within(1e-9));
        }
        double[] hourly = chances.stream().mapToDouble(chance -> chance).toArray();
        assertThat(RainChance.persistent(rho, hourly)).isCloseTo(1 - neverWet, within(1e-9));
    }
}
