package drylap.takeoff;

import static org.assertj.core.api.Assertions.assertThat;

import drylap.kernel.FacadeId;
import drylap.kernel.Rule;
import drylap.kernel.SiteId;
import drylap.planning.JobFolder;
import drylap.planning.Plan;
import drylap.planning.PlanRequest;
import drylap.planning.Planner;
import drylap.ui.QuayFolder;
import java.util.Map;
import org.junit.jupiter.api.Test;

/**
 * Quay Nine, west, method A, drained, worked by hand with the rules of {@link TakeOffTests}.
 *
 * <pre>
 * QW1-01  1200 x 1500, line 5 of 9 done: window set. Left: beads 2 x 1500, jambs 2 x (228.6 + 1500 + 215.9 = 1944.5), head 1200 + 457.2 + 50.8 = 1708.0
 *         all: apron 1657.2, pan 1504.8, 18 fasteners (3 gaps across, 4 up: 2 x 4 + 2 x 5)
 * QW1-02  as large, all done; all: the same
 * QW2-01  900 x 1200, nothing done: apron 1357.2, pan 1204.8, jambs 2 x 1644.5, head 1408.0, 16 fasteners (3 gaps each: 2 x 4 + 2 x 4)
 * </pre>
 */
class SiteTakeOffTests {
    private static final SiteId QUAY = new SiteId("Q");

    private final JobFolder folder = new QuayFolder().folder();

    @Test
    void what_is_left_of_a_site_leaves_out_what_is_on() {
        SiteList left = TakeOff.ofSite(folder, QUAY, Extent.LEFT);

        Sums sums = left.supplies().sums();
        assertThat(sums.lengthsMm())
                .isEqualTo(Map.of(
                        Strip.Kind.APRON,
                        1357.2,
                        Strip.Kind.PAN,
                        1204.8,
                        Strip.Kind.JAMB,
                        2 * 1944.5 + 2 * 1644.5,
                        Strip.Kind.HEAD,
                        1708.0 + 1408.0));
        assertThat(sums.openings()).isEqualTo(2);
        assertThat(sums.windows()).isEqualTo(1);
        assertThat(sums.fasteners()).isEqualTo(16);
        assertThat(left.byWall()).containsOnlyKeys(new FacadeId(QUAY, "west"));
    }

    /** Flashing: 4671.6 + 11 067 + 4824 = 20 562.6 of a roll of 22 860 leave 2297.4. */
    @Test
    void the_whole_site_is_taken_off_as_if_nothing_were_on() {
        SiteList whole = TakeOff.ofSite(folder, QUAY, Extent.WHOLE);

        Sums sums = whole.supplies().sums();
        assertThat(sums.lengthMm(Strip.Kind.APRON)).isEqualTo(1357.2 + 2 * 1657.2);
        assertThat(sums.lengthMm(Strip.Kind.PAN)).isEqualTo(1204.8 + 2 * 1504.8);
        assertThat(sums.windows()).isEqualTo(3);
        assertThat(sums.fasteners()).isEqualTo(16 + 2 * 18);
        assertThat(whole.supplies().cuts().getFirst().rolls())
                .singleElement()
                .satisfies(roll -> assertThat(roll.left()).isEqualTo(2297.4));
    }

    @Test
    void a_site_with_rolls_of_its_own_is_cut_from_these() {
        JobFolder own = folder.withRules(folder.rules().with(QUAY, Rule.STRIP_ROLL_M, 10));

        assertThat(TakeOff.ofSite(own, QUAY, Extent.LEFT).supplies().cuts()).allMatch(cut -> cut.rollMm() == 10_000);
        assertThat(TakeOff.ofSite(own, new SiteId("M"), Extent.LEFT).supplies().cuts())
                .isNotEmpty()
                .allMatch(cut -> cut.rollMm() == 22_860);
    }

    @Test
    void a_day_over_all_crews_is_the_sum_of_its_vans_and_cut_as_one() {
        Plan plan = Planner.standard().plan(folder, new PlanRequest(null, null, 200L, 1), _ -> {}, () -> false);
        var dates = TakeOff.dates(folder, plan);

        assertThat(dates).isNotEmpty();
        for (DayList day : TakeOff.ofDates(folder, plan, dates::contains)) {
            var vans = TakeOff.ofPlan(folder, plan, visit -> visit.date().equals(day.date()));
            assertThat(day.supplies().sums().fasteners())
                    .isEqualTo(vans.stream()
                            .mapToInt(van -> van.supplies().sums().fasteners())
                            .sum());
            assertThat(pieces(day.supplies()))
                    .isEqualTo(vans.stream()
                            .mapToInt(van -> pieces(van.supplies()))
                            .sum());
            assertThat(day.byCrew().keySet())
                    .containsExactlyElementsOf(
                            vans.stream().map(VanList::crew).sorted().toList());
        }
    }

    private static int pieces(Supplies supplies) {
        return supplies.cuts().stream()
                .flatMap(cut -> cut.rolls().stream())
                .mapToInt(roll -> roll.pieces().size())
                .sum();
    }
}
