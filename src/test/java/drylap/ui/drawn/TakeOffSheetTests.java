package drylap.ui.drawn;

import static org.assertj.core.api.Assertions.assertThat;

import drylap.kernel.Reading;
import drylap.kernel.Ruler;
import drylap.kernel.SiteId;
import drylap.kernel.Task;
import drylap.speech.Speech;
import drylap.takeoff.Extent;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

class TakeOffSheetTests {
    private static final TakeOffChoice QUAY = new TakeOffChoice.OfSite(new SiteId("Q"), Extent.WHOLE);

    private final FolderShown shown = new QuayPlan()
            .visit("W1", QuayPlan.MONDAY, "08:00", "10:00", Task.INSTALL, "QW1-01")
            .visit("W1", QuayPlan.MONDAY, "10:00", "12:00", Task.INSTALL, "QW2-01")
            .visit("P1", QuayPlan.TUESDAY, "08:00", "10:00", Task.WRAP, "QW1-01")
            .shown();

    @Test
    void days_with_something_to_put_on_come_first_then_each_site_in_both_ways() {
        assertThat(TakeOffChoice.all(shown))
                .extracting(choice -> choice.words(Speech.ENGLISH, shown))
                .containsExactly(
                        "Mon 13 Apr, all crews",
                        "Quay Nine, what is left to put on",
                        "Quay Nine, whole walls",
                        "Mill Row, what is left to put on",
                        "Mill Row, whole walls");
    }

    @Test
    void a_choice_stands_in_an_address_and_what_is_none_is_passed_over() {
        for (TakeOffChoice choice : TakeOffChoice.all(shown))
            assertThat(TakeOffChoice.of(inAddress(choice))).contains(choice);
        assertThat(TakeOffChoice.of(Map.of("date", List.of("tomorrow")))).isEmpty();
        assertThat(TakeOffChoice.of(Map.of())).isEmpty();
        assertThat(TakeOffSheet.of(Speech.ENGLISH, shown, new TakeOffChoice.OfSite(new SiteId("X"), Extent.LEFT)))
                .isEmpty();
        assertThat(TakeOffSheet.of(Speech.ENGLISH, shown, new TakeOffChoice.OfDay(LocalDate.of(2026, 4, 14))))
                .isEmpty();
    }

    private static Map<String, List<String>> inAddress(TakeOffChoice choice) {
        return choice.parameters().entrySet().stream()
                .collect(Collectors.toMap(Map.Entry::getKey, one -> List.of(one.getValue())));
    }

    /** 1644.5 mm are 64.744 in, to the sixteenth 64 3/4; 1944.5 are 76.555, 76 9/16 (25.4 mm an inch). */
    @Test
    void the_paper_says_it_by_the_ruler_of_whoever_prints_it() {
        var say = new Speech(Reading.USUAL.by(Ruler.INCHES));
        var sheet = TakeOffPaperPresenter.sheet(
                say,
                shown,
                TakeOffSheet.of(Speech.ENGLISH, shown, QUAY).orElseThrow(),
                Instant.parse("2026-04-13T13:10:00Z"));

        assertThat(sheet.title()).isEqualTo("Take-off: Quay Nine, whole walls");
        assertThat(sheet.stocks().getFirst().cuts())
                .contains("4 × jamb flashing 76 9/16 in (1945 mm)", "2 × jamb flashing 64 3/4 in (1645 mm)");
        assertThat(sheet.facts().getFirst()).startsWith("3 windows, 52 fasteners");
        assertThat(sheet.origin()).startsWith("Printed Mon 13 Apr 06:10.");
    }
}
