package drylap.ui.drawn;

import static org.assertj.core.api.Assertions.assertThat;

import drylap.kernel.Rule;
import drylap.kernel.Rules;
import drylap.kernel.Task;
import drylap.speech.Speech;
import drylap.ui.QuayFolder;
import drylap.ui.drawn.Strip.Stretch;
import drylap.ui.drawn.Strip.TaskHours;
import org.junit.jupiter.api.Test;

class StripPresenterTests {
    private final Strip strip = StripPresenter.strip(Speech.ENGLISH, QuayPlan.unplannedFolder(), QuayPlan.west());

    @Test
    void runs_over_the_days_that_have_shifts() {
        assertThat(strip.length()).isEqualTo(2 * 1440);
        assertThat(strip.days()).extracting(Strip.Midnight::label).containsExactly("Mon 13 Apr", "Tue 14 Apr");
        assertThat(strip.days()).extracting(Strip.Midnight::from).containsExactly(0L, 1440L);
    }

    /** A gust limit of 10 m/s, 4 °C and a chance of 30 % are the standard rules. */
    @Test
    void tells_the_sky_hour_by_hour_and_from_where_on_it_counts() {
        var sky = strip.sky();
        assertThat(sky.from()).isZero();
        assertThat(sky.rain()).hasSize(36);
        assertThat(sky.rain().subList(11, 15)).containsExactly(0.0, 1.0, 1.0, 0.0);
        assertThat(sky.chance().subList(11, 15)).containsExactly(5, 80, 80, 5);
        assertThat(sky.raining().subList(11, 15)).containsExactly(false, true, true, false);
        assertThat(sky.gust()).containsOnly(4.0);
        assertThat(sky.temperature()).containsOnly(12.0);
        assertThat(strip.limits().chance()).isEqualTo((int) (Rules.STANDARD.value(Rule.RAIN_P) * 100));
        assertThat(strip.limits().gust()).isEqualTo(Rules.STANDARD.value(Rule.INSTALL_GUST));
    }

    /** The wind comes from 80 degrees, behind the west wall, until it turns to 262 and blows straight at it: 2/9 x 2 x 1. */
    @Test
    void rain_is_on_the_wall_only_where_the_wind_drives_it_there() {
        assertThat(strip.sky().wall()).containsOnly(0.0);
        assertThat(strip.sky().wetting()).containsOnly(false);

        var turned = StripPresenter.strip(
                Speech.ENGLISH,
                QuayPlan.unplannedFolder(new QuayFolder().with("forecast.csv", ",2,4,80,", ",2,4,262,")),
                QuayPlan.west());
        assertThat(turned.sky().wall().get(12)).isEqualTo(0.44);
        assertThat(turned.sky().wetting().get(12)).isTrue();
        assertThat(turned.sky().wetting().get(11)).isFalse();
    }

    @Test
    void says_where_the_forecast_ends() {
        assertThat(strip.forecastEnd()).isEqualTo(36 * 60);
    }

    /** The wind comes from behind the wall, so it stays dry; sealant must skin for half an hour before the rain. */
    @Test
    void shuts_the_install_half_an_hour_before_the_rain_and_opens_it_right_after() {
        TaskHours install = strip.tasks().getFirst();
        assertThat(install.task()).isEqualTo("install");
        assertThat(install.spans()).extracting(Stretch::until).contains(690L);
        assertThat(install.spans()).extracting(Stretch::from).contains(840L);
    }

    /** Sunrise at Seattle's latitude in mid April is about 06:20 by summer time (any almanac); the wrap shuts for rain only. */
    @Test
    void says_the_same_windows_in_words() {
        TaskHours wrap = strip.tasks().get(2);
        assertThat(wrap.words().getFirst()).matches("Mon 13 Apr 06:[23]\\d to 12:00, 14:00 to 19:\\d\\d");
    }

    /** The values are those of the quay folder's forecast; the install is open until half an hour before the rain of noon. */
    @Test
    void the_hours_one_by_one_say_what_the_strip_says() {
        var hours = StripPresenter.hours(Speech.ENGLISH, QuayPlan.unplannedFolder(), QuayPlan.west());

        assertThat(hours).hasSize(48);
        assertThat(hours.get(12).at()).isEqualTo("2026-04-13T12:00");
        assertThat(hours.get(12).told()).contains(new StripHour.Told(1.0, 80, true, 0, false, 4, 12));
        assertThat(hours.get(12).open()).doesNotContain(Task.INSTALL, Task.WRAP);
        assertThat(hours.get(11).open()).contains(Task.INSTALL, Task.WRAP);
        assertThat(hours.get(35).told()).isPresent();
        assertThat(hours.get(36).told()).isEmpty();
        assertThat(hours.get(36).untold()).isEqualTo("beyond the forecast: climate only");
        assertThat(hours.get(3).dark()).isTrue();
        assertThat(hours.get(9).dark()).isFalse();
    }

    @Test
    void says_which_way_the_wall_faces() {
        assertThat(strip.title()).isEqualTo("Quay Nine, west");
        assertThat(strip.heading()).isEqualTo("faces west, 262°");
    }
}
