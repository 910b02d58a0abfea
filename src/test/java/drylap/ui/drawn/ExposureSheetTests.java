package drylap.ui.drawn;

import static org.assertj.core.api.Assertions.assertThat;

import drylap.kernel.FolderId;
import drylap.kernel.SiteId;
import drylap.planning.StoredFolder;
import drylap.speech.Speech;
import drylap.ui.QuayFolder;
import java.time.Instant;
import org.junit.jupiter.api.Test;

/** At Quay Nine it rains 1 mm an hour from noon to two on Monday, in a wind of 2 m/s from 80°. Litres worked by hand. */
class ExposureSheetTests {
    private static final SiteId QUAY = new SiteId("Q");
    private static final Instant MORNING = QuayPlan.at(QuayPlan.MONDAY, "06:00");

    /**
     * Two levels are 6 m: C_R .19 ln(6/.05) = .9096. An hour: ISO .4444 x .9096 x .4 = .162, ASHRAE .35 x .2 x 2 = .14, Straube
     * .5 x .2348 x .9096 x 2 = .214; twice that in two hours.
     */
    @Test
    void a_wall_into_the_wind_shows_its_range_its_place_and_its_wettest_hour() {
        var wall = into().walls().getFirst();
        assertThat(wall.wall()).isEqualTo("west, faces east, 80°");
        assertThat(wall.litres()).isEqualTo("0.28 to 0.43 L/m²");
        assertThat(wall.place()).isEqualTo("1 of 2 by all three models");
        assertThat(wall.wettest()).isEqualTo("Mon 13 Apr 12:00, 0.14 to 0.21 L/m²");
    }

    @Test
    void a_wall_in_the_lee_comes_last() {
        var lee = into().walls().getLast();
        assertThat(lee.wall()).startsWith("rear");
        assertThat(lee.litres()).isEqualTo("no rain reaches it");
        assertThat(lee.place()).isEqualTo("2 of 2 by all three models");
    }

    @Test
    void a_site_that_no_rain_reaches_lists_no_wall() {
        assertThat(ExposureSheet.of(Speech.ENGLISH, QuayPlan.unplannedFolder(), QUAY, MORNING)
                        .walls())
                .isEmpty();
        assertThat(ExposureSheet.of(Speech.ENGLISH, shown(), QUAY, QuayPlan.at(QuayPlan.MONDAY, "14:00"))
                        .walls())
                .isEmpty();
    }

    /** The chain of .05 and .8 with correlation .6, worked by hand; the bounds are the likeliest hour and the sum, capped. */
    @Test
    void the_chance_of_the_day_comes_with_its_bounds() {
        assertThat(into().odds())
                .isEqualTo(
                        "Chance of rain until Tue 14 Apr 06:00: about 91 %; no model can give less than 80 % or more than 100 %.");
        assertThat(ExposureSheet.of(Speech.ENGLISH, shown(), new SiteId("M"), MORNING)
                        .odds())
                .isEqualTo("No forecast from now on.");
    }

    @Test
    void what_is_taken_is_said_and_called_uncertain() {
        assertThat(into().assumed())
                .startsWith(
                        "Taken: terrain II, ground upwind rises 0, nearest obstacle at 200 m (leaves 1), wall factor 0.4")
                .contains("These are uncertain and can be set");
        assertThat(ExposureSheet.CAUTION).contains("not a promise of litres").contains("more than a factor of 2");
    }

    private static ExposureSheet into() {
        return ExposureSheet.of(Speech.ENGLISH, shown(), QUAY, MORNING);
    }

    private static FolderShown shown() {
        var folder = new QuayFolder()
                .with("facades.csv", "Q,west,262,2026-04-17", "Q,west,80,2026-04-17\nQ,rear,260,")
                .folder();
        return new FolderShown(new StoredFolder(new FolderId(1), "quay", MORNING, 2, 5), folder, PlanChoice.NONE);
    }
}
