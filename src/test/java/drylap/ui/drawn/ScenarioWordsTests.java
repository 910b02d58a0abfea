package drylap.ui.drawn;

import static org.assertj.core.api.Assertions.assertThat;

import drylap.kernel.CrewId;
import drylap.kernel.OpeningId;
import drylap.kernel.SiteId;
import drylap.kernel.TimeWindow;
import drylap.speech.Speech;
import drylap.whatif.AddCrew;
import drylap.whatif.Change;
import drylap.whatif.DelayDelivery;
import drylap.whatif.DropDay;
import drylap.whatif.OtherForecast;
import drylap.whatif.OtherRain;
import drylap.whatif.RainByPercent;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;

class ScenarioWordsTests {
    private static final LocalDate MONDAY = LocalDate.of(2026, 4, 13);
    private static final SiteId QUAY = new SiteId("Q");
    private final FolderShown shown = QuayPlan.unplannedFolder();

    private String words(Change change) {
        return ScenarioWords.of(Speech.ENGLISH, shown, change);
    }

    @Test
    void crews_that_come_or_stay_away_are_told_with_their_day() {
        assertThat(words(new AddCrew(new CrewId("W2"), new CrewId("W1"), MONDAY)))
                .isEqualTo("crew W2 comes too, with the hours of crew W1, from Mon 13 Apr on");
        assertThat(words(new DropDay(MONDAY, new CrewId("W1"), null))).isEqualTo("crew W1 does not come on Mon 13 Apr");
        assertThat(words(new DropDay(MONDAY, null, QUAY))).isEqualTo("no crew of Quay Nine comes on Mon 13 Apr");
    }

    @Test
    void a_late_delivery_is_told_with_its_wall_or_opening() {
        assertThat(words(new DelayDelivery(QuayPlan.west(), null, 1)))
                .isEqualTo("the windows of Quay Nine, west come 1 day later");
        assertThat(words(new DelayDelivery(null, new OpeningId("QW1-01"), 3)))
                .isEqualTo("the window of QW1-01 comes 3 days later");
    }

    @Test
    void other_weather_is_told_by_the_sites_clock() {
        var hours = new TimeWindow(QuayPlan.at(MONDAY, "08:00"), QuayPlan.at(MONDAY, "11:00"));
        assertThat(words(new OtherRain(QUAY, hours, true)))
                .isEqualTo("rain for certain at Quay Nine, Mon 13 Apr 08:00 to Mon 13 Apr 11:00");
        assertThat(words(new OtherRain(QUAY, hours, false))).startsWith("no rain at Quay Nine");
        assertThat(words(new RainByPercent(-50))).isEqualTo("every hour's rain is 50 % less");
        assertThat(words(new RainByPercent(100))).isEqualTo("every hour's rain is 100 % more");
        assertThat(words(new OtherForecast(shown.folder().forecasts())))
                .isEqualTo("another forecast, for Quay Nine, Mill Row");
    }
}
