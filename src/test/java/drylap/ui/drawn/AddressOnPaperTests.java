package drylap.ui.drawn;

import static drylap.ui.drawn.QuayPlan.MONDAY;
import static org.assertj.core.api.Assertions.assertThat;

import drylap.kernel.CrewId;
import drylap.kernel.Language;
import drylap.kernel.Reading;
import drylap.kernel.Task;
import drylap.papers.DaySheet;
import drylap.speech.Speech;
import drylap.ui.QuayFolder;
import java.time.Instant;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Where a site is by road, and how many a crew are: of Quay Nine and W1 that is told, of Mill Row and P1 it is not. */
class AddressOnPaperTests {
    private static final CrewId W1 = new CrewId("W1");
    private static final Instant MORNING = Instant.parse("2026-04-13T13:00:00Z");
    private static final Speech SPANISH = new Speech(Reading.USUAL.in(Language.SPANISH));

    private final FolderShown shown = new QuayPlan(new QuayFolder().told())
            .visit("W1", MONDAY, "07:15", "08:00", Task.INSTALL, "QW2-01")
            .visit("W1", MONDAY, "08:00", "08:45", Task.INSTALL, "QW1-02")
            .visit("W1", MONDAY, "10:00", "11:00", Task.INSTALL, "MS1-01")
            .visit("W1", MONDAY, "12:00", "13:00", Task.INSTALL, "QW1-01")
            .shown();

    private DaySheet day(Speech say) {
        return DayPaperPresenter.sheet(say, shown, W1, MONDAY, MORNING, "https://x", _ -> Set.of(), List.of());
    }

    @Test
    void a_crew_finds_each_site_of_its_day_and_reads_how_many_they_are() {
        assertThat(day(Speech.ENGLISH).title()).isEqualTo("Mon 13 Apr, crew W1, 3 people");
        assertThat(day(SPANISH).title()).endsWith(", 3 personas");
        assertThat(day(Speech.ENGLISH).places())
                .extracting(DaySheet.Place::name, DaySheet.Place::address)
                .containsExactly(
                        org.assertj.core.groups.Tuple.tuple("Quay Nine", List.of("1 Invented Quay", "Sample Harbour")),
                        org.assertj.core.groups.Tuple.tuple("Mill Row", List.of()));
    }

    @Test
    void my_day_says_the_address_where_the_crew_comes_to_a_site_and_not_at_each_opening() {
        assertThat(CrewDayPresenter.day(Speech.ENGLISH, shown, W1, MONDAY, MORNING)
                        .stops())
                .extracting(CrewDay.Stop::address)
                .containsExactly("1 Invented Quay, Sample Harbour", "", "", "1 Invented Quay, Sample Harbour");
    }

    @Test
    void the_week_on_paper_has_the_addresses_of_its_sites_and_the_number_beside_the_trade() {
        var week = WeekPaperPresenter.sheet(Speech.ENGLISH, shown, WeekChoice.ALL, MORNING, "https://x");

        assertThat(week.where()).containsExactly("Quay Nine, 1 Invented Quay, Sample Harbour");
        assertThat(week.crews())
                .extracting(crew -> crew.trade())
                .containsExactly("window crew, 3 people", "wrap crew", "siding crew");
    }

    @Test
    void the_page_of_the_crews_says_how_many_they_are_in_each_language() {
        assertThat(CrewsSheet.of(Speech.ENGLISH, shown, List.of()).crews())
                .extracting(CrewsSheet.OneCrew::trade)
                .startsWith("window crew, 3 people");
        assertThat(CrewsSheet.of(SPANISH, shown, List.of()).crews().getFirst().trade())
                .endsWith(", 3 personas");
    }
}
