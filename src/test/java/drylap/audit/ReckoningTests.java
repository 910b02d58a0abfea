package drylap.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import drylap.assembly.Approach;
import drylap.assembly.Method;
import drylap.crews.TravelTimes;
import drylap.kernel.GeoPoint;
import drylap.kernel.SiteId;
import drylap.kernel.Task;
import drylap.planning.LabourRow;
import drylap.sites.Opening;
import drylap.sites.Site;
import drylap.sites.Terrain;
import java.math.BigDecimal;
import java.time.Instant;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The audit's own arithmetic against figures from outside the project. */
class ReckoningTests {
    /** Computed from the two-state chain of Gabriel and Neumann (QJRMS 88, 1962): 1 - (1-p)(1 - p(1-rho))^(n-1). */
    @ParameterizedTest
    @CsvSource({
        ".2, 8, 0, .832228",
        ".2, 8, .3, .721658",
        ".2, 8, .6, .553723",
        ".2, 8, .8, .398842",
        ".2, 8, 1, .2",
        ".05, 10, .6, .207940"
    })
    void hours_of_one_chance_follow_the_closed_form(double p, int hours, double rho, double expected) {
        assertThat(PersistentRain.chance(Collections.nCopies(hours, p), rho)).isCloseTo(expected, within(1e-6));
    }

    /** Computed once by hand from the same chain with changing chances; the independent value is 0.5968. */
    @Test
    void hours_of_changing_chance_follow_the_chain() {
        List<Double> hours = List.of(.1, .2, .3, .2);
        assertThat(PersistentRain.chance(hours, .6)).isCloseTo(.365162, within(1e-6));
        assertThat(PersistentRain.chance(hours, 0)).isCloseTo(.5968, within(1e-12));
    }

    /** Fréchet's bounds, which hold for any events: at least the greatest, at most the sum. */
    @Test
    void a_chance_never_leaves_the_bounds_of_frechet() {
        for (double[] hours : new double[][] {{.9, .05, .9}, {0, 1, 0}, {.01, .99}, {.5, .5, .5}, {1, 1}}) {
            double chance = PersistentRain.chance(Arrays.stream(hours).boxed().toList(), .6);
            assertThat(chance)
                    .isBetween(
                            Arrays.stream(hours).max().orElseThrow() - 1e-12,
                            Math.min(1, Arrays.stream(hours).sum()) + 1e-12);
        }
        assertThat(PersistentRain.chance(List.of(), .6)).isZero();
    }

    /**
     * Land's End to John o' Groats, 968.9 km on a sphere of 6371 km: a widely published worked example, from memory. BNA to
     * LAX, 2886.44 km on the same sphere: another, from memory. A quarter of a meridian is R x pi / 2.
     */
    @ParameterizedTest
    @CsvSource({
        "50.0663889, -5.7147222, 58.6438889, -3.07, 968.9, .05",
        "36.12, -86.67, 33.94, -118.40, 2886.448, .01",
        "0, 0, 90, 0, 10007.557, .001",
        "0, 0, 0, 180, 20015.115, .001",
        "49, -123, 49, -123, 0, 0"
    })
    void great_circles_are_the_published_ones(double lat, double lon, double lat2, double lon2, double km, double by) {
        assertThat(Roads.kilometres(new GeoPoint(lat, lon), new GeoPoint(lat2, lon2)))
                .isCloseTo(km, within(by));
    }

    @Test
    void a_road_is_as_given_in_its_direction_and_else_estimated_and_none_within_a_site() {
        // 0.09 degrees of latitude are 10.0076 km; 1.3 times that at 40 km/h takes 19.51 minutes.
        Site north = site("north", 49.09);
        Site south = site("south", 49);
        Roads roads = new Roads(new TravelTimes(
                Map.of(new TravelTimes.Leg("north", "south"), 7, new TravelTimes.Leg("south", "south"), 9)));
        assertThat(roads.between(north, south)).isEqualTo(7);
        assertThat(roads.between(south, north)).isEqualTo(20);
        assertThat(roads.between(south, south)).isZero();
    }

    private static Site site(String id, double latitude) {
        return new Site(new SiteId(id), id, new GeoPoint(latitude, 8), ZoneId.of("UTC"), Terrain.III);
    }

    /** ISO 15927-3, (2/9) v r^(8/9) cos(D - theta); computed from the published formula. */
    @ParameterizedTest
    @CsvSource({
        "5, 2, 180, 180, 2.057499",
        "8, 1, 60, 0, .888889",
        "4, .5, 270, 270, .480027",
        "10, 10, 45, 0, 12.166380",
        "6, 3, 180, 0, 0",
        "3, .2, 350, 10, .149826"
    })
    void driving_rain_is_that_of_the_standard(double v, double r, double from, double azimuth, double expected) {
        var hour = new drylap.weather.ForecastHour(Instant.EPOCH, r, 1, v, v, from, 10, 90);
        assertThat(WallHours.drivingRain(hour, azimuth)).isCloseTo(expected, within(1e-4));
    }

    @Test
    void minutes_come_from_the_most_specific_row_and_are_rounded_up_from_exact_decimals() {
        WorkMinutes minutes = new WorkMinutes(
                List.of(row(Task.INSTALL, null, "20", "10", "5"), row(Task.INSTALL, Method.B1, "30", "0.1", "0")));
        Opening any = Design.of("X", TwoSites.QUAY_EAST, 1, Method.A, Approach.DRAINAGE)
                .opening();
        // 20 + 10 x 1.5 + 5; for B1 30 + 0.15, and 30 + 0.1 x 10 exactly.
        assertThat(minutes.of(any, Task.INSTALL)).isEqualTo(40);
        Opening own = Design.of("X", TwoSites.QUAY_EAST, 1, Method.B1, Approach.DRAINAGE)
                .opening();
        assertThat(minutes.of(own, Task.INSTALL)).isEqualTo(31);
        assertThat(minutes.of(Design.like(own).sized(2500, 4000).opening(), Task.INSTALL))
                .isEqualTo(31);
        assertThat(minutes.of(any, Task.TEST)).isEqualTo(45);
    }

    @Test
    void what_is_left_of_an_install_takes_its_share_of_the_minutes_and_at_least_ten() {
        WorkMinutes minutes = new WorkMinutes(List.of(row(Task.INSTALL, null, "40", "0", "0")));
        Opening whole = Design.of("X", TwoSites.QUAY_EAST, 1, Method.B1, Approach.DRAINAGE)
                .opening();
        // Six steps, 2 to 7: accepting the opening is not one of them.
        assertThat(minutes.of(Design.like(whole).begun(1).opening(), Task.INSTALL))
                .isEqualTo(40);
        assertThat(minutes.of(Design.like(whole).begun(2).opening(), Task.INSTALL))
                .isEqualTo(34);
        assertThat(minutes.of(Design.like(whole).begun(6).opening(), Task.INSTALL))
                .isEqualTo(10);
    }

    private static LabourRow row(Task task, @Nullable Method method, String fixed, String perM2, String pan) {
        return new LabourRow(task, method, new BigDecimal(fixed), new BigDecimal(perM2), new BigDecimal(pan), 0, 0, 0);
    }
}
