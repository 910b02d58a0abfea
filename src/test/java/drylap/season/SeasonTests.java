package drylap.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import drylap.kernel.SiteId;
import drylap.kernel.Trade;
import drylap.season.SiteOutlook.FacadeOutlook;
import drylap.season.SiteOutlook.OneMore;
import java.time.YearMonth;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.ForkJoinPool;
import org.junit.jupiter.api.Test;

/**
 * Worked by hand, dry all year: ten installs of 60 minutes and ten claddings of 30, six hours a day. The windows take 360 minutes on
 * Monday and 240 on Tuesday; on Tuesday six of ten openings may be clad (180 minutes), on Wednesday the rest (120).
 */
class SeasonTests {
    private static final SeasonRequest DRY = request(Map.of());

    private static SeasonRequest request(Map<Trade, Integer> crews) {
        return new SeasonRequest(SmallSite.FROM, SmallSite.normals(0, 0), crews, 50, 1);
    }

    private static SiteOutlook outlook(SmallSite site, SeasonRequest request) {
        return Season.of(site.folder(), SmallSite.SITE, request);
    }

    private static OneMore more(SiteOutlook outlook, Trade trade) {
        return outlook.oneMore().stream()
                .filter(one -> one.trade() == trade)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void the_work_is_through_on_the_day_that_the_hand_reckoning_gives() {
        FacadeOutlook wall = outlook(SmallSite.usual(), DRY).facades().getFirst();

        assertThat(List.of(wall.installLeft(), wall.wrapLeft(), wall.cladLeft()))
                .containsExactly(10.0, 0.0, 5.0);
        assertThat(wall.through5()).isEqualTo(SmallSite.MONDAY.plusDays(2));
        assertThat(wall.through9()).isEqualTo(SmallSite.MONDAY.plusDays(2));
        assertThat(wall.inTime()).isNull();
        assertThat(wall.months().getFirst().installLeft()).isEqualTo(10);
        assertThat(wall.months().get(1).workLeft()).isZero();
    }

    /** With two window crews Monday sees all installs, Tuesday all claddings: a day earlier, for as many crew-days. */
    @Test
    void one_more_crew_gains_what_the_hand_reckoning_gives() {
        SiteOutlook tuesday = outlook(SmallSite.usual().due(SmallSite.MONDAY.plusDays(1)), DRY);
        OneMore windows = more(tuesday, Trade.WINDOW);

        assertThat(tuesday.inTime()).isEqualTo(new Estimate(0, 0));
        assertThat(windows.gained()).isEqualTo(new Estimate(1, 0));
        assertThat(windows.daysEarlier()).isEqualTo(new Estimate(1, 0));
        assertThat(windows.crewDays().value()).isZero();
        assertThat(windows.lateSaved()).as("24 hours at 200").isEqualTo(4800);
        assertThat(windows.pays()).isEqualTo(YearMonth.of(2026, 6));
        assertThat(windows.months().get(1).gained().value()).isZero();
    }

    /** A second siding crew has nothing more to clad on Tuesday, but is there on two days. */
    @Test
    void one_more_crew_of_the_trade_that_is_not_short_costs_and_gains_nothing() {
        SiteOutlook tuesday = outlook(SmallSite.usual().due(SmallSite.MONDAY.plusDays(1)), DRY);
        OneMore siding = more(tuesday, Trade.SIDING);

        assertThat(siding.gained()).isEqualTo(new Estimate(0, 0));
        assertThat(siding.daysEarlier().value()).isZero();
        assertThat(siding.crewDays().value()).isEqualTo(2);
        assertThat(siding.crewDayCost()).as("two crew-days at 400").isEqualTo(800);
        assertThat(siding.pays()).isNull();
        assertThat(tuesday.oneMore()).extracting(OneMore::trade).doesNotContain(Trade.WRAP);
    }

    @Test
    void crews_that_are_asked_for_are_reckoned_with() {
        SiteOutlook two = outlook(SmallSite.usual(), request(Map.of(Trade.WINDOW, 2)));

        assertThat(two.crews()).containsEntry(Trade.WINDOW, 2.0).containsEntry(Trade.SIDING, 1.0);
        assertThat(two.facades().getFirst().through5()).isEqualTo(SmallSite.MONDAY.plusDays(1));
        assertThat(outlook(SmallSite.usual(), request(Map.of(Trade.SIDING, 0)))
                        .facades()
                        .getFirst()
                        .through5())
                .as("nobody clads")
                .isNull();
    }

    @Test
    void nothing_is_installed_before_its_window_comes() {
        FacadeOutlook wall = outlook(SmallSite.usual().delivered(SmallSite.MONDAY.plusDays(20)), DRY)
                .facades()
                .getFirst();

        assertThat(wall.through5()).isEqualTo(SmallSite.MONDAY.plusDays(22));
    }

    @Test
    void work_that_no_year_gets_through_is_not_in_time_however_late_it_is_due() {
        FacadeOutlook wall = outlook(
                        SmallSite.usual().due(SmallSite.MONDAY.plusYears(3)), request(Map.of(Trade.SIDING, 0)))
                .facades()
                .getFirst();

        assertThat(wall.inTime()).isEqualTo(new Estimate(0, 0));
    }

    @Test
    void the_number_of_threads_changes_nothing() {
        var request = new SeasonRequest(SmallSite.FROM, SmallSite.normals(12, 4), Map.of(), 100, 5);
        var folder = SmallSite.usual().due(SmallSite.MONDAY.plusDays(3)).folder();
        try (var one = new ForkJoinPool(1);
                var three = new ForkJoinPool(3)) {
            SiteOutlook first = Season.of(folder, SmallSite.SITE, request, one);

            assertThat(Season.of(folder, SmallSite.SITE, request, three)).isEqualTo(first);
            assertThat(first.facades().getFirst().months().get(2).usable().error())
                    .isPositive();
        }
    }

    /** The error of a chance over n years is that of n throws of a coin, with n - 1 beneath. */
    @Test
    void the_error_of_a_chance_is_the_binomial_one() {
        var request = new SeasonRequest(SmallSite.FROM, SmallSite.normals(12, 0), Map.of(), 400, 5);
        Estimate chance = Objects.requireNonNull(outlook(SmallSite.usual().due(SmallSite.MONDAY.plusDays(2)), request)
                .inTime());

        assertThat(chance.value()).isStrictlyBetween(0.05, 0.95);
        assertThat(chance.error()).isCloseTo(Math.sqrt(chance.value() * (1 - chance.value()) / 399), within(1e-9));
    }

    @Test
    void an_assumed_climate_is_marked_and_normals_are_not() {
        assertThat(outlook(SmallSite.usual(), new SeasonRequest(SmallSite.FROM, List.of()))
                        .assumed())
                .isTrue();
        assertThat(outlook(SmallSite.usual(), DRY).assumed()).isFalse();
    }

    @Test
    void what_cannot_be_asked_is_refused_with_what_would_be_accepted() {
        assertThatThrownBy(() -> new SeasonRequest(SmallSite.FROM, List.of(), Map.of(), 3, 1))
                .hasMessageContaining("3 years; accepted: 50 to 10000");
        assertThatThrownBy(() -> request(Map.of(Trade.WRAP, -1))).hasMessageContaining("accepted: 0 to 100");
        assertThatThrownBy(() -> Season.of(SmallSite.usual().folder(), new SiteId("none"), DRY))
                .hasMessageContaining("no site none");
    }
}
