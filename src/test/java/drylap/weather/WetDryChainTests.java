package drylap.weather;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Tel Aviv, 27 winters: Gabriel and Neumann, QJRMS 88 (1962), 90-95, as a textbook quotes them. December: transition counts of a
 * textbook problem (published), results worked by hand. Check values 47 to 51 of the domain notes.
 */
class WetDryChainTests {
    private static final WetDryChain TEL_AVIV = new WetDryChain(0.662, 0.250);
    private static final WetDryChain DECEMBER = WetDryChain.counted(213, 326, 117, 511);

    /** Published: 42.5 %. */
    @Test
    void four_days_in_ten_are_wet_in_the_long_run() {
        assertThat(TEL_AVIV.longRunWet()).isCloseTo(0.42517, within(1e-4));
    }

    /** .75 x .25 + .25 x .662; one published answer page says 0.320, which is wrong. */
    @Test
    void the_second_day_after_a_dry_one_is_wet() {
        assertThat(TEL_AVIV.wetLater(2, false)).isCloseTo(0.353, within(1e-9));
    }

    @Test
    void spells_last_some_days() {
        assertThat(TEL_AVIV.meanWetSpell()).isCloseTo(2.9586, within(1e-3));
        assertThat(TEL_AVIV.meanDrySpell()).isCloseTo(4.0, within(1e-3));
        assertThat(TEL_AVIV.meanCycle()).isCloseTo(6.9586, within(1e-3));
    }

    @Test
    void three_days_have_a_wet_one() {
        assertThat(TEL_AVIV.anyWet(3, false)).isCloseTo(0.578125, within(1e-6));
        assertThat(TEL_AVIV.anyWet(3)).isCloseTo(0.676658, within(1e-6));
        double wet = TEL_AVIV.longRunWet();
        assertThat(RainChance.independent(wet, wet, wet)).isCloseTo(0.810059, within(1e-6));
    }

    @Test
    void counted_steps_tell_the_chances() {
        assertThat(DECEMBER.wetAfterWet()).isCloseTo(0.65337, within(1e-4));
        assertThat(DECEMBER.wetAfterDry()).isCloseTo(0.22896, within(1e-4));
        assertThat(1 - DECEMBER.wetLater(2, false)).isCloseTo(0.67386, within(1e-4));
        assertThat(DECEMBER.longRunWet()).isCloseTo(0.39778, within(1e-4));
        assertThatThrownBy(() -> WetDryChain.counted(0, 0, 3, 9)).hasMessageContaining("0 wet and 9 dry steps");
    }

    /** From memory: counts 350/1399 and 687/1038 give the published .250 and .662 again. */
    @Test
    void the_published_chances_come_from_counts() {
        var counted = WetDryChain.counted(687, 1038, 350, 1399);
        assertThat(counted.wetAfterWet()).isCloseTo(0.662, within(5e-4));
        assertThat(counted.wetAfterDry()).isCloseTo(0.250, within(5e-4));
    }

    /** The chain of section 6 of the domain notes: the same chance as of hours with .2 each, p01 = p(1 - rho). */
    @ParameterizedTest
    @CsvSource({"0.2, 0.6, 8, 0.553723", "0.2, 0.3, 8, 0.721658", "0.05, 0.6, 10, 0.207940"})
    void a_chain_of_a_chance_and_a_correlation_is_that_of_persistent_hours(
            double wet, double rho, int hours, double expected) {
        var chain = WetDryChain.persistent(wet, rho);
        assertThat(chain.longRunWet()).isCloseTo(wet, within(1e-12));
        assertThat(chain.correlation()).isCloseTo(rho, within(1e-12));
        assertThat(chain.anyWet(hours)).isCloseTo(expected, within(1e-6));
    }

    /** A walk of its own: 400,000 days; 4 standard errors, the share's widened by the chain's memory (1+r)/(1-r). */
    @Test
    void a_long_walk_finds_the_closed_forms() {
        var random = new SplittableRandom(20260413);
        int days = 400_000;
        int wetDays = 0;
        int wetSpells = 0;
        boolean wet = false;
        for (int day = 0; day < days; day++) {
            boolean next = random.nextDouble() < TEL_AVIV.wetAfter(wet);
            if (next) wetDays++;
            if (next && !wet) wetSpells++;
            wet = next;
        }
        double share = TEL_AVIV.longRunWet();
        double memory = (1 + TEL_AVIV.correlation()) / (1 - TEL_AVIV.correlation());
        assertThat((double) wetDays / days)
                .isCloseTo(share, within(4 * Math.sqrt(share * (1 - share) * memory / days)));
        double spread = Math.sqrt(TEL_AVIV.wetAfterWet()) / (1 - TEL_AVIV.wetAfterWet());
        assertThat((double) wetDays / wetSpells)
                .isCloseTo(TEL_AVIV.meanWetSpell(), within(4 * spread / Math.sqrt(wetSpells)));
    }

    @Test
    void weather_that_never_turns_has_no_long_run() {
        var still = new WetDryChain(1, 0);
        assertThatThrownBy(still::longRunWet).hasMessageContaining("the first step settles");
        assertThat(still.meanWetSpell()).isInfinite();
        assertThat(still.anyWet(9, false)).isZero();
        assertThat(TEL_AVIV.anyWet(0)).isZero();
        assertThat(TEL_AVIV.wetLater(0, true)).isEqualTo(1);
        assertThatThrownBy(() -> TEL_AVIV.wetLater(-1, true)).hasMessageContaining("-1 steps");
        assertThatThrownBy(() -> new WetDryChain(1.1, 0.2)).hasMessageContaining("1.1 is outside 0..1");
    }
}
