package drylap.audit;

import static drylap.audit.TwoSites.at;
import static org.assertj.core.api.Assertions.assertThat;

import drylap.kernel.Rules;
import drylap.kernel.Task;
import drylap.planning.JobFolder;
import drylap.sites.Facade;
import drylap.sites.Site;
import drylap.weather.Forecast;
import drylap.weather.ForecastHour;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The table of open hours, cell by cell; Monday the 13th from 10 on, in full daylight. */
class WallHoursTests {
    private static final JobFolder FOLDER = TwoSites.folder();
    private static final Site QUAY = FOLDER.sites().getFirst();

    private static WallHours wall(double azimuth, ForecastHour... hours) {
        SiteSky sky = new SiteSky(QUAY, new Forecast(QUAY.id(), List.of(hours)), Rules.STANDARD);
        return new WallHours(new Facade(TwoSites.QUAY_NORTH, azimuth, null), sky, Rules.STANDARD);
    }

    private static ForecastHour hour(String time, double mm, double p, double gust, double celsius) {
        return new ForecastHour(at("13 " + time), mm, p, 5, gust, 0, celsius, 80);
    }

    private static Set<ContractRule> shut(WallHours wall, Task task, String time) {
        return wall.shut(task, at("13 " + time), SiteSky.SUN_TOLERANCE);
    }

    @ParameterizedTest
    @CsvSource({
        // mm, p, gust, celsius: install, test, wrap, clad
        "0.2, 0.3, 5, 10, RAINING, , RAINING, RAINING",
        "0.19, 0.3, 5, 10, , , , ",
        "0.2, 0.29, 5, 10, , , , ",
        "0, 0, 9.1, 10, , , GUST, ",
        "0, 0, 9, 10, , , , ",
        "0, 0, 11.1, 10, GUST, GUST, GUST, ",
        "0, 0, 11, 10, , , GUST, ",
        "0, 0, 5, 4.3, COLD, , , ",
        "0, 0, 5, 4.4, , , , ",
        "0, 0, 5, 0.9, COLD, COLD, , ",
        "0, 0, 5, 1, COLD, , , "
    })
    void each_task_has_its_own_limits(
            double mm,
            double p,
            double gust,
            double celsius,
            ContractRule install,
            ContractRule test,
            ContractRule wrap,
            ContractRule clad) {
        WallHours wall = wall(180, hour("10:00", mm, p, gust, celsius));
        assertThat(shut(wall, Task.INSTALL, "10:30")).isEqualTo(just(install));
        assertThat(shut(wall, Task.TEST, "10:30")).isEqualTo(just(test));
        assertThat(shut(wall, Task.WRAP, "10:30")).isEqualTo(just(wrap));
        assertThat(shut(wall, Task.CLAD, "10:30")).isEqualTo(just(clad));
    }

    private static Set<ContractRule> just(ContractRule rule) {
        return rule == null ? Set.of() : Set.of(rule);
    }

    private static WallHours afterRain(double azimuth) {
        return wall(
                azimuth,
                hour("10:00", 1, 0.9, 5, 10),
                hour("11:00", 0, 0, 5, 10),
                hour("12:00", 0, 0, 5, 10),
                hour("13:00", 0, 0, 5, 10),
                hour("14:00", 0, 0, 5, 10));
    }

    @Test
    void a_wetted_wall_dries_for_three_hours_and_only_installs_wait() {
        assertThat(shut(afterRain(0), Task.INSTALL, "11:00")).containsExactly(ContractRule.DRYING);
        assertThat(shut(afterRain(0), Task.INSTALL, "13:59")).containsExactly(ContractRule.DRYING);
        assertThat(shut(afterRain(0), Task.INSTALL, "14:00")).isEmpty();
        assertThat(shut(afterRain(0), Task.WRAP, "11:00")).isEmpty();
    }

    @Test
    void a_wall_in_the_lee_opens_at_once() {
        assertThat(shut(afterRain(180), Task.INSTALL, "11:00")).isEmpty();
    }

    @Test
    void beyond_the_forecast_only_the_dark_shuts() {
        WallHours wall = wall(0, hour("10:00", 1, 0.9, 20, -5));
        assertThat(shut(wall, Task.INSTALL, "11:00")).isEmpty();
        assertThat(shut(wall, Task.INSTALL, "09:59")).isEmpty();
        assertThat(shut(wall, Task.CLAD, "23:00")).containsExactly(ContractRule.DARK);
    }

    @Test
    void the_end_of_an_install_keeps_half_an_hour_from_rain() {
        WallHours wall = wall(0, hour("10:00", 0, 0, 5, 10), hour("11:00", 1, 0.9, 5, 10));
        assertThat(wall.skinCutShort(Task.INSTALL, at("13 10:30"))).isFalse();
        assertThat(wall.skinCutShort(Task.INSTALL, at("13 10:31"))).isTrue();
        assertThat(wall.skinCutShort(Task.INSTALL, at("13 11:00"))).isTrue();
        assertThat(wall.skinCutShort(Task.INSTALL, at("13 12:00"))).isFalse();
        assertThat(wall.skinCutShort(Task.WRAP, at("13 10:31"))).isFalse();
    }

    /** The sun itself is checked in {@link SunTests}. */
    @Test
    void the_dark_begins_half_an_hour_before_sunset() {
        Sun.Day sun = Sun.day(QUAY.place(), QUAY.zone(), java.time.LocalDate.of(2026, 4, 13));
        WallHours wall = wall(0);
        assertThat(wall.shut(Task.CLAD, sun.set().minusSeconds(29 * 60), SiteSky.SUN_TOLERANCE))
                .containsExactly(ContractRule.DARK);
        assertThat(wall.shut(Task.CLAD, sun.set().minusSeconds(31 * 60), SiteSky.SUN_TOLERANCE))
                .isEmpty();
        assertThat(wall.shut(Task.CLAD, sun.rise().minusSeconds(61), SiteSky.SUN_TOLERANCE))
                .containsExactly(ContractRule.DARK);
        assertThat(wall.shut(Task.CLAD, sun.rise(), SiteSky.SUN_TOLERANCE)).isEmpty();
    }
}
