package drylap.forecasts;

import static drylap.forecasts.ForecastSource.MET_NORWAY;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import drylap.forecasts.LastingRain.Solved;
import drylap.forecasts.LastingSolver.Telling;
import drylap.weather.RainPersistence.Told;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * A source is played as an ensemble: each member draws its hours wet or dry by a chain of a known correlation, and the source
 * tells the shares of members with rain, of each hour and of all six. No arithmetic of the solver is used.
 */
class LastingSolverTests {
    private static final LocalDate FIRST = LocalDate.of(2026, 4, 13);
    private static final int MEMBERS = 500;

    private final Random dice = new Random(5);

    private List<Telling> simulated(int days, double rho) {
        List<Telling> all = new ArrayList<>();
        for (int period = 0; period < 4 * days; period++)
            all.add(new Telling(FIRST.plusDays(period / 4), ensemble(rho)));
        return all;
    }

    private Told ensemble(double rho) {
        double[] truth = IntStream.range(0, 6)
                .mapToDouble(_ -> 0.05 + 0.35 * dice.nextDouble())
                .toArray();
        int[] wet = new int[6];
        int any = 0;
        for (int member = 0; member < MEMBERS; member++) any += member(truth, rho, wet) ? 1 : 0;
        return new Told(
                IntStream.of(wet).mapToObj(count -> (double) count / MEMBERS).toList(), (double) any / MEMBERS);
    }

    /** Marks the member's wet hours; whether there is one. */
    private boolean member(double[] truth, double rho, int[] wet) {
        boolean rains = false;
        boolean any = false;
        for (int hour = 0; hour < 6; hour++) {
            rains = dice.nextDouble() < (hour == 0 ? truth[0] : after(rains, truth[hour - 1], truth[hour], rho));
            if (rains) wet[hour]++;
            any |= rains;
        }
        return any;
    }

    private static double after(boolean wet, double before, double now, double rho) {
        double both = Math.min(
                Math.min(before, now), before * now + rho * Math.sqrt(before * (1 - before) * now * (1 - now)));
        return wet ? both / before : (now - both) / (1 - before);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.3, 0.6, 0.72})
    void a_known_correlation_is_recovered_from_simulated_tellings(double rho) {
        assertThat(LastingSolver.of(MET_NORWAY, simulated(25, rho))).isInstanceOfSatisfying(Solved.class, solved -> {
            assertThat(solved.tellings()).isEqualTo(100);
            assertThat(solved.hours()).isEqualTo(6);
            assertThat(solved.days()).isEqualTo(25);
            assertThat(solved.spread()).isBetween(0.001, 0.03);
            assertThat(solved.rho()).isCloseTo(rho, within(3 * solved.spread()));
        });
    }

    @Test
    void too_few_tellings_or_days_are_no_answer() {
        assertThat(LastingSolver.of(MET_NORWAY, simulated(4, 0.6)).said().words())
                .isEqualTo(
                        "16 tellings of 4 days by MET Norway, Locationforecast say something so far; 20 of 3 days do");
        List<Telling> oneDay = simulated(25, 0.6).stream()
                .map(one -> new Telling(FIRST, one.told()))
                .toList();
        assertThat(LastingSolver.of(MET_NORWAY, oneDay).said().words()).startsWith("100 tellings of 1 days");
    }

    @Test
    void dry_days_say_nothing_and_do_not_count() {
        List<Telling> dry = IntStream.range(0, 40)
                .mapToObj(day -> new Telling(FIRST.plusDays(day), new Told(Collections.nCopies(6, 0.0), 0)))
                .toList();

        assertThat(LastingSolver.of(MET_NORWAY, dry).said().words()).startsWith("0 tellings of 0 days");
    }

    @Test
    void a_source_whose_two_chances_are_of_different_events_is_not_believed() {
        List<Telling> less = simulated(25, 0.6).stream()
                .map(one -> new Telling(
                        one.date(), new Told(one.told().hourly(), one.told().together() / 4)))
                .toList();

        assertThat(LastingSolver.of(MET_NORWAY, less).said().words())
                .endsWith("its two chances are not of the same event");
    }

    @Test
    void a_few_tellings_of_no_model_are_left_out_and_counted() {
        List<Telling> some = new ArrayList<>(simulated(25, 0.6));
        for (int i = 0; i < 10; i++)
            some.set(10 * i, new Telling(some.get(10 * i).date(), new Told(Collections.nCopies(6, 0.3), 0.1)));

        assertThat(LastingSolver.of(MET_NORWAY, some)).isInstanceOfSatisfying(Solved.class, solved -> {
            assertThat(solved.leftOut()).isEqualTo(10);
            assertThat(solved.tellings()).isEqualTo(90);
            assertThat(solved.rho()).isCloseTo(0.6, within(3 * solved.spread()));
        });
    }

    @Test
    void showers_that_make_room_for_each_other_have_no_correlation() {
        List<Telling> more = simulated(25, 0.6).stream()
                .map(one -> new Telling(
                        one.date(),
                        new Told(
                                one.told().hourly(),
                                Math.min(
                                        0.99,
                                        0.97
                                                * one.told().hourly().stream()
                                                        .mapToDouble(Double::doubleValue)
                                                        .sum()))))
                .toList();

        assertThat(LastingSolver.of(MET_NORWAY, more).said().words())
                .contains("together ask for more than independent hours");
    }
}
