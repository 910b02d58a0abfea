package drylap.papers;

import static drylap.papers.ReadPaper.flat;
import static drylap.papers.ReadPaper.letters;
import static drylap.papers.ReadPaper.text;
import static org.assertj.core.api.Assertions.assertThat;

import drylap.speech.Speech;
import java.io.IOException;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The paper as another library reads and renders it. */
class CrewDayPaperTests {
    @Test
    void the_text_of_the_paper_is_that_of_the_day() throws IOException {
        var day = DaySheets.of(5);

        String text = flat(text(CrewDayPaper.pdf(day, Paper.A4)));

        assertThat(text).contains(day.title(), day.load().getFirst(), "Hold points", "rough opening accepted");
        assertThat(text).contains("Quay Nine 1 Invented Quay Sample Harbour Site Q");
        assertThat(text).contains(flat(DaySheets.ODD_SITE));
        for (var stop : day.stops()) {
            assertThat(text).contains("%s %s".formatted(stop.time(), stop.opening()));
            stop.warnings().forEach(warning -> assertThat(text).contains("! " + warning));
            stop.steps().forEach(step -> assertThat(text).contains(flat(step.words())));
        }
        assertThat(text).contains("A dry hour is never a statement that work at height is safe.");
        assertThat(text).contains("head flashing", "Not to scale; the maker's instructions govern.");
    }

    @ParameterizedTest
    @EnumSource(names = {"A4", "LETTER"})
    void every_page_has_its_head_and_number_and_no_letter_outside_its_margins(Paper paper) throws IOException {
        try (var document = Loader.loadPDF(CrewDayPaper.pdf(DaySheets.of(17), paper))) {
            int pages = document.getNumberOfPages();
            assertThat(pages).isGreaterThan(4);
            for (int page = 1; page <= pages; page++) {
                var letters = letters(document, page);
                assertThat(letters.text()).contains("Mon 13 Apr, crew W1", "page %d of %d".formatted(page, pages));
                assertThat(letters.positions()).isNotEmpty();
                assertThat(ReadPaper.outside(document, page, paper)).isEmpty();
            }
        }
    }

    @Test
    void every_code_on_the_printed_page_opens_its_own_opening() throws Exception {
        var found = ReadPaper.codes(CrewDayPaper.pdf(DaySheets.of(7), Paper.LETTER));

        assertThat(found)
                .containsExactlyInAnyOrderElementsOf(
                        IntStream.range(0, 7).mapToObj(DaySheets::link).toList());
    }

    @Test
    void fonts_are_in_the_file() throws IOException {
        try (var document = Loader.loadPDF(CrewDayPaper.pdf(DaySheets.of(2), Paper.A4))) {
            for (var page : document.getPages())
                for (var name : page.getResources().getFontNames()) {
                    PDFont font = page.getResources().getFont(name);
                    assertThat(font.isEmbedded()).as(font.getName()).isTrue();
                }
        }
    }

    @Test
    void what_the_font_has_no_letter_for_is_a_question_mark_and_a_long_word_is_broken() {
        assertThat(Fonts.REGULAR.printable("北 é\tŁ")).isEqualTo("? é Ł");
        var lines = Fonts.REGULAR.wrap("x".repeat(300) + " y", 10, 200);
        assertThat(lines).hasSizeGreaterThan(5).allMatch(line -> Fonts.REGULAR.width(line, 10) <= 200);
        assertThat(String.join("", lines).replace(" ", "")).isEqualTo("x".repeat(300) + "y");
    }

    @Test
    void a_day_without_visits_is_a_paper_that_says_so() throws IOException {
        var empty = new DaySheet(
                Speech.ENGLISH, "Tue 14 Apr, crew W1", "By no plan.", List.of(), List.of(), List.of(), List.of());

        assertThat(text(CrewDayPaper.pdf(empty, Paper.A4))).contains("No visits", "page 1 of 1");
    }
}
