package drylap.ui.drawn;

import static org.assertj.core.api.Assertions.assertThat;

import drylap.ui.drawn.Strip.RainHour;
import drylap.ui.drawn.Strip.Stretch;
import drylap.ui.drawn.Strip.TaskHours;
import org.junit.jupiter.api.Test;

class StripPresenterTests {
    private final Strip strip = StripPresenter.strip(QuayPlan.unplannedFolder(), QuayPlan.west());

    @Test
    void runs_over_the_days_that_have_shifts() {
        assertThat(strip.length()).isEqualTo(2 * 1440);
        assertThat(strip.days()).extracting(Strip.Midnight::label).containsExactly("Mon 13 Apr", "Tue 14 Apr");
        assertThat(strip.days()).extracting(Strip.Midnight::from).containsExactly(0L, 1440L);
    }

    @Test
    void tells_which_hours_count_as_rain() {
        assertThat(strip.rain().stream().filter(RainHour::raining))
                .extracting(RainHour::from)
                .containsExactly(720L, 780L);
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

    @Test
    void says_which_way_the_wall_faces() {
        assertThat(strip.title()).isEqualTo("Quay Nine, west");
        assertThat(strip.heading()).isEqualTo("faces west, 262°");
    }
}
