package drylap.risk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import drylap.climate.DrawnSky;
import drylap.kernel.FacadeId;
import drylap.kernel.Rule;
import drylap.planning.JobFolder;
import java.time.Duration;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

class RiskTests {
    private static final RiskRequest FEW = new RiskRequest(200, 42);

    @Test
    void one_thread_and_three_say_the_same() {
        assertThat(on(3)).isEqualTo(on(1));
    }

    @Test
    void another_seed_says_something_else_but_not_much_else() {
        RiskReport one = Risk.of(Demo.RAINY.folder(), Demo.RAINY.plan(), FEW);
        RiskReport other = Risk.of(Demo.RAINY.folder(), Demo.RAINY.plan(), new RiskRequest(200, 43));

        assertThat(other).isNotEqualTo(one);
        assertThat(totals(other).covers().value())
                .isCloseTo(
                        totals(one).covers().value(),
                        within(4
                                * Math.hypot(
                                        totals(one).covers().error(),
                                        totals(other).covers().error())));
    }

    /** Nothing is left to chance, so all trials are alike and as planned. */
    @Test
    void without_rain_and_without_spread_every_trial_is_the_plan() {
        RiskReport report = Risk.of(Demo.DRY.folder(), Demo.DRY.plan(), new RiskRequest(100, 1, null, Demo.desert()));

        assertThat(report.handovers()).isNotEmpty().allSatisfy(wall -> {
            assertThat(wall.p50().at()).isEqualTo(wall.planned());
            assertThat(wall.p90().at()).isEqualTo(wall.planned());
            assertThat(wall.p90().error()).isEqualTo(Duration.ZERO);
        });
        assertThat(report.openings())
                .allSatisfy(one -> assertThat(one.rainedOn().value()).isZero());
        assertThat(report.crewDays())
                .allSatisfy(day -> assertThat(day.slips().value()).isZero());
        assertThat(totals(report).daysCome().value()).isEqualTo(totals(report).daysPlanned());
        assertThat(totals(report).covers().value()).isZero();
    }

    @Test
    void later_quantiles_are_never_earlier_and_every_spread_adds_up() {
        RiskReport report = Risk.of(Demo.RAINY.folder(), Demo.RAINY.plan(), FEW);

        assertThat(report.handovers()).isNotEmpty().allSatisfy(wall -> {
            var p50 = Objects.requireNonNull(wall.p50().at());
            var p80 = Objects.requireNonNull(wall.p80().at());
            assertThat(p50).isAfterOrEqualTo(wall.planned());
            assertThat(p80).isAfterOrEqualTo(p50);
            double spread = wall.spread().stream()
                    .mapToDouble(RiskReport.DayChance::chance)
                    .sum();
            assertThat(spread + (double) wall.never() / report.trials()).isCloseTo(1, within(1e-9));
        });
        assertThat(report.openings())
                .allSatisfy(one -> assertThat(one.wet().value())
                        .isLessThanOrEqualTo(one.rainedOn().value()));
        assertThat(report.openings().getFirst().wet().value()).isPositive();
    }

    /** Sites next to each other have one weather: the same chances give the same rain, hour by hour, in every trial. */
    @Test
    void sites_of_one_cell_share_the_rain_and_sites_far_apart_do_not() {
        assertThat(sameWetHours(100)).isTrue();
        assertThat(sameWetHours(0)).isFalse();
    }

    private static boolean sameWetHours(double cellKm) {
        JobFolder folder = Demo.RAINY.folder();
        JobFolder alike =
                folder.withForecasts(List.of()).withRules(folder.rules().with(null, Rule.WEATHER_CELL_KM, cellKm));
        JobBook book = new JobBook(alike, List.of(), Demo.RAINY.plan().start(), List.of());
        DrawnSky sky = new DrawnSky(book.skies);
        sky.draw(Trials.streams(1, 9).getFirst());
        assertThat(sky.wet(0).cardinality()).isPositive();
        return sky.wet(0).equals(sky.wet(1));
    }

    @Test
    void progress_is_told_and_a_halt_leaves_no_report() {
        AtomicInteger most = new AtomicInteger();
        var whole = Risk.of(
                Demo.RAINY.folder(),
                Demo.RAINY.plan(),
                FEW,
                done -> most.accumulateAndGet(done, Math::max),
                () -> false);

        assertThat(whole).isPresent();
        assertThat(most).hasValue(FEW.trials());
        assertThat(Risk.of(Demo.RAINY.folder(), Demo.RAINY.plan(), FEW, _ -> {}, () -> most.incrementAndGet() > 250))
                .isEmpty();
    }

    @Test
    void what_cannot_be_is_refused_with_what_would_be_accepted() {
        assertThatThrownBy(() -> new RiskRequest(3, 1)).hasMessageContaining("accepted: 100 to 100000");
    }

    @Test
    void a_facade_is_named_once() {
        RiskReport report = Risk.of(Demo.RAINY.folder(), Demo.RAINY.plan(), FEW);

        assertThat(report.handovers().stream().map(RiskReport.Handover::facade))
                .doesNotHaveDuplicates()
                .allMatch(FacadeId.class::isInstance);
    }

    private static RiskReport on(int threads) {
        try (ForkJoinPool pool = new ForkJoinPool(threads)) {
            return Risk.of(Demo.RAINY.folder(), Demo.RAINY.plan(), FEW, _ -> {}, () -> false, pool)
                    .orElseThrow();
        }
    }

    private static RiskReport.Totals totals(RiskReport report) {
        return Objects.requireNonNull(report.totals());
    }
}
