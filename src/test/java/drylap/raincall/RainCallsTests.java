package drylap.raincall;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import drylap.assembly.Approach;
import drylap.assembly.Method;
import drylap.assembly.SecondLayer;
import drylap.kernel.FacadeId;
import drylap.kernel.OpeningId;
import drylap.kernel.Rule;
import drylap.kernel.SiteId;
import drylap.planning.JobFixture;
import drylap.planning.JobFolder;
import drylap.sites.Facade;
import drylap.sites.Opening;
import drylap.weather.Forecast;
import drylap.weather.ForecastHour;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A site with a west and an east wall at noon, and rain from the west to come. */
class RainCallsTests {
    private static final SiteId SITE = new SiteId("S1");
    private static final FacadeId WEST = new FacadeId(SITE, "W");
    private static final FacadeId EAST = new FacadeId(SITE, "E");
    private static final Instant NOON =
            JobFixture.MONDAY.atTime(LocalTime.NOON).atZone(JobFixture.ZONE).toInstant();
    /** One square metre; drainage, so the block of B1 is cut, apron with pan, jambs, set, head, flap: lines 2 to 7. */
    private static final int CUT = 2;

    private static final int SET = 5;
    private static final int WHOLE_BLOCK_MIN = 55 + 12 + 15;

    private static Opening opening(String id, FacadeId facade, int level, int done) {
        return new Opening(
                new OpeningId(id),
                facade,
                level,
                1000,
                1000,
                drylap.assembly.Frame.VINYL,
                Method.B1,
                Approach.DRAINAGE,
                SecondLayer.NONE,
                JobFixture.MONDAY,
                false,
                0,
                done,
                null);
    }

    /** 2 mm in each of 3 hours, 5 m/s from the west: 2.0575 L/m² an hour head-on (the check value of the three models). */
    private static JobFolder folder(int rainInHours, double chance, Opening... openings) {
        var base = JobFixture.twoWallsOfTwoLevels();
        List<ForecastHour> hours = new ArrayList<>();
        for (int hour = -12; hour < 30; hour++) {
            boolean wet = hour >= rainInHours && hour < rainInHours + 3;
            hours.add(new ForecastHour(
                    NOON.plus(Duration.ofHours(hour)), wet ? 2 : 0, wet ? chance : 0, 5, 7, 270, 12, 80));
        }
        return new JobFolder(
                base.sites(),
                List.of(new Facade(WEST, 270, null), new Facade(EAST, 90, null)),
                List.of(openings),
                base.crews(),
                base.shifts(),
                base.travel(),
                List.of(new Forecast(SITE, hours)),
                base.labour(),
                base.rules(),
                List.of());
    }

    @Test
    void only_openings_that_are_begun_and_not_complete_are_called() {
        var call = RainCalls.at(
                folder(1, 1, opening("begun", WEST, 1, SET), opening("new", WEST, 1, 1), opening("done", WEST, 1, 7)),
                SITE,
                NOON);

        assertThat(call.open()).extracting(one -> one.id().value()).containsExactly("begun");
    }

    @Test
    void an_open_opening_takes_the_driving_rain_of_its_wall_on_its_area() {
        var call = RainCalls.at(folder(1, 0.5, opening("W1", WEST, 1, CUT)), SITE, NOON);

        assertThat(call.rainAt()).contains(NOON.plus(Duration.ofHours(1)));
        assertThat(call.untilRain()).contains(Duration.ofHours(1));
        assertThat(call.order().litresIfNothingIsDone()).isCloseTo(0.5 * 3 * 2.0575, within(1e-3));
    }

    @Test
    void a_wall_in_the_lee_takes_a_small_share() {
        var call = RainCalls.at(folder(1, 1, opening("E1", EAST, 1, CUT)), SITE, NOON);

        assertThat(call.order().litresIfNothingIsDone()).isCloseTo(0.05 * 3 * 2.0575, within(1e-3));
    }

    /** 82 minutes for a whole block of 6 lines, 5 of them to do after the cut: 69; the skin needs 30 before the rain. */
    @Test
    void with_time_enough_it_is_closed_with_the_minutes_of_the_labour_table() {
        var call = RainCalls.at(folder(3, 1, opening("W1", WEST, 1, CUT)), SITE, NOON);

        var stop = call.order().stops().getFirst();
        assertThat(stop.act()).isEqualTo(Act.CLOSE);
        assertThat(stop.until() - stop.from()).isEqualTo(Math.ceilDiv(WHOLE_BLOCK_MIN * 5, 6));
        assertThat(stop.from()).as("set-up of a facade").isEqualTo(10);
        assertThat(call.order().litres()).isZero();
    }

    /** 10 walk + 69 work = 79 fit the 90 minutes that are dry for sealant, but not when rain comes half an hour earlier. */
    @Test
    void half_an_hour_earlier_it_can_only_be_covered() {
        var call = RainCalls.at(folder(2, 1, opening("W1", WEST, 1, CUT)), SITE, NOON);

        assertThat(call.order().stops().getFirst().act()).isEqualTo(Act.CLOSE);
        assertThat(call.ifEarlier().stops().getFirst().act()).isEqualTo(Act.COVER);
        assertThat(call.changesIfEarlier()).isTrue();
        assertThat(call.ifEarlier().litres())
                .as("a tenth of the rain gets in behind a cover over open laps")
                .isCloseTo(0.1 * 3 * 2.0575, within(1e-3));
    }

    @Test
    void a_crew_that_stands_in_the_course_has_no_way_to_go() {
        var folder = folder(1, 1, opening("W1", WEST, 1, CUT), opening("W2", WEST, 2, CUT));

        var stops = RainCalls.at(folder, SITE, NOON, Optional.of(new OpeningId("W1")))
                .order()
                .stops();

        assertThat(stops.getFirst().opening().value()).isEqualTo("W1");
        assertThat(stops.getFirst().from()).isZero();
        assertThat(stops.getLast().from() - stops.getFirst().until())
                .as("set-up of a level")
                .isEqualTo(5);
    }

    @Test
    void rain_that_falls_already_asks_for_the_wet_wall_first() {
        var folder = folder(0, 1, opening("E1", EAST, 1, CUT), opening("W1", WEST, 1, CUT));

        var call = RainCalls.at(folder, SITE, NOON.plus(Duration.ofMinutes(10)));

        assertThat(call.untilRain()).contains(Duration.ZERO);
        assertThat(call.order().stops())
                .extracting(stop -> stop.opening().value())
                .containsExactly("W1", "E1");
        assertThat(call.order().stops()).extracting(RainCall.Stop::act).containsOnly(Act.COVER);
    }

    @Test
    void the_rules_of_the_contractor_count() {
        var folder = folder(0, 1, opening("W1", WEST, 1, CUT));
        var slow = new JobFolder(
                folder.sites(),
                folder.facades(),
                folder.openings(),
                folder.crews(),
                folder.shifts(),
                folder.travel(),
                folder.forecasts(),
                folder.labour(),
                folder.rules().with(null, Rule.COVER_MIN, 20),
                List.of());

        var stop = RainCalls.at(slow, SITE, NOON).order().stops().getFirst();

        assertThat(stop.until() - stop.from()).isEqualTo(20);
    }

    @Test
    void without_rain_there_is_no_water_and_no_hurry() {
        var call = RainCalls.at(folder(25, 1, opening("W1", WEST, 1, CUT)), SITE, NOON);

        assertThat(call.rainAt()).isEmpty();
        assertThat(call.order().litresIfNothingIsDone()).isZero();
    }

    private static RainCalls.Call seen(JobFolder folder, int minutes) {
        return RainCalls.at(folder, SITE, NOON, Optional.empty(), Optional.of(Duration.ofMinutes(minutes)));
    }

    /** The forecast gives 120 minutes, of which 79 are needed and 30 kept for the skin; at 100 seen ones they no longer fit. */
    @Test
    void rain_that_the_crew_sees_coming_sooner_leaves_time_for_a_cover_only() {
        var folder = folder(2, 1, opening("W1", WEST, 1, CUT));

        assertThat(seen(folder, 110).order().stops().getFirst().act()).isEqualTo(Act.CLOSE);
        assertThat(seen(folder, 100).order().stops().getFirst().act()).isEqualTo(Act.COVER);
        assertThat(seen(folder, 100).order().litresIfNothingIsDone())
                .as("the same rain, only sooner")
                .isCloseTo(3 * 2.0575, within(1e-3));
        assertThat(seen(folder, 100).rainAt()).as("the forecast's own").contains(NOON.plus(Duration.ofHours(2)));
    }

    @Test
    void rain_that_the_crew_sees_coming_later_leaves_time_to_close_and_wets_nothing_before() {
        var raining = folder(0, 1, opening("W1", WEST, 1, CUT));

        assertThat(seen(folder(1, 1, opening("W1", WEST, 1, CUT)), 150)
                        .order()
                        .stops()
                        .getFirst()
                        .act())
                .isEqualTo(Act.CLOSE);
        assertThat(RainCalls.at(raining, SITE, NOON).order().litres()).isPositive();
        assertThat(seen(raining, 60).order().stops().getFirst().act()).isEqualTo(Act.COVER);
        assertThat(seen(raining, 60).order().litres())
                .as("covered while it is dry, a tenth of what comes after")
                .isCloseTo(0.1 * 3 * 2.0575, within(1e-3));
    }

    /** 2/9 of 5 m/s with 2.5 mm: 2.509 L/m² in the hour, head-on at both walls. */
    @Test
    void rain_that_no_forecast_has_falls_for_an_hour_on_every_wall() {
        var folder = folder(25, 1, opening("W1", WEST, 1, CUT), opening("E1", EAST, 1, CUT));

        var order = seen(folder, 40).order();

        assertThat(order.litresIfLeft().values())
                .hasSize(2)
                .allSatisfy(litres -> assertThat(litres).isCloseTo(2.509, within(1e-3)));
        assertThat(order.stops()).hasSize(2).extracting(RainCall.Stop::act).containsOnly(Act.COVER);
    }

    @Test
    void a_site_that_is_not_there_is_refused() {
        assertThatThrownBy(() -> RainCalls.at(folder(1, 1), new SiteId("none"), NOON))
                .hasMessageContaining("the folder has no site none");
    }
}
