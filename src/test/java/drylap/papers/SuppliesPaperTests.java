package drylap.papers;

import static org.assertj.core.api.Assertions.assertThat;

import drylap.papers.SuppliesSheet.Line;
import drylap.papers.SuppliesSheet.Stock;
import drylap.speech.Speech;
import java.io.IOException;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.pdfbox.Loader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The take-off on paper as another library reads it. */
class SuppliesPaperTests {
    private static SuppliesSheet sheet(int rolls) {
        return new SuppliesSheet(
                Speech.ENGLISH,
                "Take-off: " + DaySheets.ODD_SITE,
                "Printed Mon 13 Apr 06:10.",
                List.of("300 windows, 5400 fasteners, 600 cartridges of sealant, 600 pan corners", "Strips: many"),
                List.of(new Line("west", "200 windows"), new Line("a wall with a very long name", "100 windows")),
                List.of(
                        stock("flashing strip 229 mm (9 in) wide, from rolls of 22.9 m: " + rolls, rolls),
                        stock("pan strip 229 mm (9 in) wide, from rolls of 22.9 m: 1", 1)),
                List.of(
                        "Sizes are the trade's defaults or your firm's own; the window maker's instructions come first."));
    }

    private static Stock stock(String head, int rolls) {
        return new Stock(
                head,
                IntStream.range(0, rolls / 3 + 1)
                        .mapToObj("%d × jamb flashing 1969 mm (77 1/2 in), piece 1 of 2"::formatted)
                        .toList(),
                IntStream.rangeClosed(1, rolls)
                        .mapToObj(roll -> new Line(
                                "Roll %d".formatted(roll),
                                "4 × jamb flashing 1969 mm (77 1/2 in) for C%dA, C%dB; 2 × apron strip 1371 mm (54 in) for C%dZ"
                                        .formatted(roll, roll, roll)))
                        .toList());
    }

    @ParameterizedTest
    @EnumSource(names = {"A4", "LETTER"})
    void every_roll_is_on_some_page_and_no_letter_outside_its_margins(Paper paper) throws IOException {
        byte[] pdf = SuppliesPaper.pdf(sheet(90), paper);

        String text = ReadPaper.flat(ReadPaper.text(pdf));
        for (int roll = 1; roll <= 90; roll++) assertThat(text).containsPattern("\\bC%dZ\\b".formatted(roll));
        assertThat(text)
                .contains("5400 fasteners", "west 200 windows", "pan strip 229 mm", "the window maker's instructions")
                .contains("A dry hour is never a statement that work at height is safe.");
        try (var document = Loader.loadPDF(pdf)) {
            int pages = document.getNumberOfPages();
            assertThat(pages).isBetween(2, 9);
            for (int page = 1; page <= pages; page++) {
                assertThat(ReadPaper.outside(document, page, paper))
                        .as("page %d", page)
                        .isEmpty();
                assertThat(ReadPaper.letters(document, page).text()).contains("page %d of %d".formatted(page, pages));
            }
        }
    }

    /** A roll that many short pieces come from, each for another opening. */
    @Test
    void words_longer_than_a_page_go_on_on_the_next() throws IOException {
        String names = String.join(
                ", ", IntStream.range(0, 900).mapToObj("QW-%d"::formatted).toList());
        SuppliesSheet one = sheet(1);
        byte[] pdf = SuppliesPaper.pdf(
                new SuppliesSheet(
                        one.say(),
                        one.title(),
                        one.origin(),
                        one.facts(),
                        one.shares(),
                        List.of(new Stock("flashing strip", List.of(), List.of(new Line("Roll 1", names)))),
                        one.notes()),
                Paper.A4);

        try (var document = Loader.loadPDF(pdf)) {
            for (int page = 1; page <= document.getNumberOfPages(); page++)
                assertThat(ReadPaper.outside(document, page, Paper.A4)).isEmpty();
        }
        assertThat(ReadPaper.flat(ReadPaper.text(pdf))).contains("QW-0,", "QW-899");
    }
}
