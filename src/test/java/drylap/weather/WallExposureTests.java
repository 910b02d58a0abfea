package drylap.weather;

import static drylap.weather.Sky.EAST;
import static drylap.weather.Sky.WEST;
import static drylap.weather.Sky.clock;
import static drylap.weather.Sky.mild;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import drylap.kernel.Rules;
import drylap.sites.Facade;
import drylap.sites.Terrain;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Rain of the sample sky comes from the east, 5 mm an hour in a wind of 6 m/s. */
class WallExposureTests {
    private static final WallSetting LOW = WallSetting.of(Terrain.III, 2, Rules.STANDARD);
    private static final WallSetting TALL = WallSetting.of(Terrain.III, 8, Rules.STANDARD);
    private static final Facade SOUTH_EAST = Sky.facade("south-east", 135);

    @Test
    void rain_from_the_east_reaches_the_east_wall_alone() {
        assertThat(exposure(EAST, LOW).hours())
                .extracting(WallExposure.Hour::start)
                .containsExactly(clock("10:00"), clock("14:00"));
        assertThat(exposure(WEST, LOW).hours()).isEmpty();
        assertThat(exposure(WEST, LOW).total().most()).isZero();
        assertThat(exposure(WEST, LOW).wettest()).isEmpty();
    }

    @Test
    void a_total_adds_the_hours_up_model_by_model() {
        ModelRange hour = exposure(EAST, LOW).hours().getFirst().litres();
        ModelRange total = exposure(EAST, LOW).total();
        assertThat(total.iso()).isCloseTo(2 * hour.iso(), within(1e-12));
        assertThat(total.ashrae()).isCloseTo(2 * hour.ashrae(), within(1e-12));
        assertThat(total.drops()).isCloseTo(2 * hour.drops(), within(1e-12));
    }

    @Test
    void an_hour_that_has_ended_counts_no_more() {
        var later = WallExposure.of(EAST, LOW, forecast(), clock("11:00"));
        assertThat(later.hours()).extracting(WallExposure.Hour::start).containsExactly(clock("14:00"));
        assertThat(WallExposure.of(EAST, LOW, forecast(), clock("10:59")).hours())
                .hasSize(2);
    }

    @Test
    void walls_are_ranked_by_what_reaches_them() {
        var walls = List.of(exposure(EAST, LOW), exposure(SOUTH_EAST, LOW), exposure(WEST, LOW));
        assertThat(walls.get(0).among(walls)).isEqualTo(new WallExposure.Place(1, 1, 3));
        assertThat(walls.get(1).among(walls)).isEqualTo(new WallExposure.Place(2, 2, 3));
        assertThat(walls.get(2).among(walls)).isEqualTo(new WallExposure.Place(3, 3, 3));
    }

    /** 24 m against 6 m: ISO and Straube give 1.335 (ln 80 / ln 26.7) times as much, ASHRAE 1.3; cos 40° is .766, so 1.02 and .996. */
    @Test
    void where_the_models_differ_a_wall_has_a_range_of_places() {
        var tall = exposure(Sky.facade("tall", 130), TALL);
        var walls = List.of(exposure(EAST, LOW), tall);
        assertThat(tall.among(walls)).isEqualTo(new WallExposure.Place(1, 2, 2));
    }

    private static WallExposure exposure(Facade facade, WallSetting setting) {
        return WallExposure.of(facade, setting, forecast(), clock("00:00"));
    }

    private static Forecast forecast() {
        return new Forecast(Sky.SITE.id(), mild().rain(10).rain(14).hours());
    }
}
