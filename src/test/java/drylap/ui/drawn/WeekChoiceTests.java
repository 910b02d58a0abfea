package drylap.ui.drawn;

import static drylap.ui.drawn.QuayPlan.MONDAY;
import static drylap.ui.drawn.QuayPlan.TUESDAY;
import static org.assertj.core.api.Assertions.assertThat;

import drylap.kernel.CrewId;
import drylap.kernel.SiteId;
import drylap.kernel.Task;
import drylap.kernel.Trade;
import drylap.speech.Speech;
import drylap.ui.drawn.Week.CrewRow;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class WeekChoiceTests {
    private final FolderShown shown = new QuayPlan()
            .visit("W1", MONDAY, "08:00", "09:00", Task.INSTALL, "QW1-01")
            .visit("W1", MONDAY, "13:00", "14:00", Task.INSTALL, "MS1-01")
            .visit("P1", TUESDAY, "08:00", "08:20", Task.WRAP, "QW1-01")
            .shown();

    @Test
    void of_a_site_only_its_visits_and_the_crews_sent_there_are_shown() {
        Week week = WeekPresenter.week(Speech.ENGLISH, shown, new WeekChoice(new SiteId("M"), null, null));

        assertThat(week.crews()).extracting(CrewRow::crew).containsExactly("W1");
        assertThat(week.days().getFirst().sites())
                .extracting(Week.SiteSky::code)
                .containsExactly("M");
        var monday = week.crews().getFirst().days().getFirst();
        assertThat(monday.blocks()).hasSize(1);
        assertThat(monday.hidden()).isEqualTo(1);
    }

    @Test
    void of_a_trade_and_of_a_crew_the_others_rows_are_left_out() {
        assertThat(WeekPresenter.week(Speech.ENGLISH, shown, new WeekChoice(null, Trade.WRAP, null))
                        .crews())
                .extracting(CrewRow::crew)
                .containsExactly("P1");
        assertThat(WeekPresenter.week(Speech.ENGLISH, shown, new WeekChoice(null, null, new CrewId("C1")))
                        .crews())
                .extracting(CrewRow::crew)
                .containsExactly("C1");
    }

    @Test
    void says_how_much_is_shown_of_how_much() {
        assertThat(WeekChoice.ALL.words(Speech.ENGLISH, shown)).isEqualTo("3 of 3 visits, 3 of 3 crews");
        assertThat(new WeekChoice(new SiteId("Q"), Trade.WINDOW, null).words(Speech.ENGLISH, shown))
                .isEqualTo("1 of 3 visits, 1 of 3 crews; the others are filtered out");
    }

    @Test
    void goes_into_an_address_and_comes_back() {
        var choice = new WeekChoice(new SiteId("Q"), Trade.SIDING, new CrewId("C1"));

        assertThat(choice.parameters())
                .containsExactlyInAnyOrderEntriesOf(Map.of("site", "Q", "trade", "siding", "crew", "C1"));
        assertThat(WeekChoice.of(Map.of("site", List.of("Q"), "trade", List.of("siding"), "crew", List.of("C1"))))
                .isEqualTo(choice);
    }

    @Test
    void words_of_an_address_that_mean_nothing_here_are_passed_over() {
        var choice = WeekChoice.of(Map.of("trade", List.of("roofing"), "site", List.of("gone"), "crew", List.of("")));

        assertThat(choice.within(shown)).isEqualTo(WeekChoice.ALL);
    }
}
