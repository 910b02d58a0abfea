package drylap.papers;

import static org.assertj.core.api.Assertions.assertThat;

import drylap.papers.WeekPlan.Band;
import drylap.papers.WeekPlan.Band.Kind;
import drylap.papers.WeekPlan.Cell;
import drylap.papers.WeekPlan.Crew;
import drylap.papers.WeekPlan.Day;
import drylap.papers.WeekPlan.Stay;
import drylap.speech.Speech;
import java.io.IOException;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.pdfbox.Loader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The week on a large paper as other libraries read and render it. */
class WeekPaperTests {
    private static final String LINK = "https://drylap.example.org/week-sheet";

    /** Every opening of it has a name of its own, so that one that is left out is missed. */
    static WeekPlan plan(int days, int crews, int stays, int openings) {
        return new WeekPlan(
                Speech.ENGLISH,
                "Crews, Mon 13 Apr to Sun 19 Apr",
                "By the plan published Sun 12 Apr 18:00; printed Mon 13 Apr 06:10.",
                List.of("Open to rain now, close or cover first: QW1-01"),
                List.of("Quay Nine, 1 Invented Quay, Sample Harbour", "Mill Row, 2 Made-up Lane"),
                LINK,
                6 * 60,
                20 * 60,
                IntStream.range(0, days)
                        .mapToObj(day -> new Day("Day %d".formatted(day), List.of("Rain at Quay Nine: 13:00–17:00")))
                        .toList(),
                IntStream.range(0, crews)
                        .mapToObj(crew -> crew(crew, days, stays, openings))
                        .toList());
    }

    private static Crew crew(int crew, int days, int stays, int openings) {
        return new Crew(
                "W%d".formatted(crew),
                "window crew",
                IntStream.range(0, days)
                        .mapToObj(day -> new Cell(
                                day % 7 == 6 ? "off" : "",
                                bands(),
                                day % 7 == 6
                                        ? List.of()
                                        : IntStream.range(0, stays)
                                                .mapToObj(stay -> stay(crew, day, stay, openings))
                                                .toList()))
                        .toList());
    }

    private static List<Band> bands() {
        return List.of(
                new Band(Kind.SHIFT, 7 * 60, 15 * 60 + 30),
                new Band(Kind.DARK, 0, 6 * 60 + 40),
                new Band(Kind.DARK, 19 * 60, 24 * 60),
                new Band(Kind.RAIN, 13 * 60, 17 * 60),
                new Band(Kind.WORK, 7 * 60 + 15, 8 * 60),
                new Band(Kind.WORK, 8 * 60, 9 * 60),
                new Band(Kind.NOT_FORECAST, 18 * 60, 24 * 60));
    }

    private static Stay stay(int crew, int day, int stay, int openings) {
        return new Stay(
                "07:15–09:00 Install",
                "Quay Nine, west, level 2",
                String.join(
                        ", ",
                        IntStream.range(0, openings)
                                .mapToObj(one -> name(crew, day, stay, one))
                                .toList()),
                stay == 1 ? List.of("rain is told for these hours") : List.of());
    }

    private static String name(int crew, int day, int stay, int opening) {
        return "C%dD%dS%dO%d".formatted(crew, day, stay, opening);
    }

    /** A hundred sites where it rains each day: their lines alone are higher than a page. */
    @ParameterizedTest
    @EnumSource(names = {"A3", "TABLOID"})
    void rain_at_many_sites_leaves_room_for_every_crew(Paper paper) throws IOException {
        var usual = plan(7, 3, 4, 5);
        var sites = IntStream.range(0, 100).mapToObj("Site %d"::formatted).toList();
        var days = usual.days().stream()
                .map(day -> new Day(
                        day.name(),
                        sites.stream().map("Rain at %s: 13:00–17:00"::formatted).toList()))
                .toList();
        var where = sites.stream().map("%s, 1 Invented Quay"::formatted).toList();
        var many = new WeekPlan(
                usual.say(), "Many sites", "", usual.notes(), where, LINK, 6 * 60, 20 * 60, days, usual.crews());

        byte[] pdf = WeekPaper.pdf(many, paper);

        String text = ReadPaper.flat(ReadPaper.text(pdf));
        for (String site : where) assertThat(text).contains(site);
        for (int crew = 0; crew < 3; crew++)
            assertThat(text).containsPattern("\\b%s\\b".formatted(name(crew, 5, 3, 4)));
        assertThat(text)
                .contains("Rain at Site 0: 13:00–17:00")
                .containsPattern("Rain at \\d+ more sites: see the strips");
        try (var document = Loader.loadPDF(pdf)) {
            for (int page = 1; page <= document.getNumberOfPages(); page++)
                assertThat(ReadPaper.outside(document, page, paper))
                        .as("page %d", page)
                        .isEmpty();
        }
    }

    @ParameterizedTest
    @EnumSource(names = {"A3", "TABLOID"})
    void a_week_of_many_crews_is_whole_over_as_many_pages_as_it_takes(Paper paper) throws IOException {
        byte[] pdf = WeekPaper.pdf(plan(7, 9, 4, 5), paper);

        String text = ReadPaper.flat(ReadPaper.text(pdf));
        for (int crew = 0; crew < 9; crew++)
            for (int day = 0; day < 6; day++)
                for (int stay = 0; stay < 4; stay++)
                    for (int one = 0; one < 5; one++)
                        assertThat(text).containsPattern("\\b%s\\b".formatted(name(crew, day, stay, one)));
        assertThat(text).contains("rain is told for these hours", "Rain at Quay Nine: 13:00–17:00", "not forecast yet");
        assertThat(text).contains("Quay Nine, 1 Invented Quay, Sample Harbour", "Mill Row, 2 Made-up Lane");
        assertThat(text).contains("A dry hour is never a statement that work at height is safe.");
    }

    @ParameterizedTest
    @EnumSource(names = {"A3", "TABLOID"})
    void no_letter_is_outside_the_margins_and_every_page_has_its_days(Paper paper) throws IOException {
        try (var document = Loader.loadPDF(WeekPaper.pdf(plan(7, 9, 4, 5), paper))) {
            int pages = document.getNumberOfPages();
            assertThat(pages).isBetween(2, 9);
            for (int page = 1; page <= pages; page++) {
                assertThat(ReadPaper.outside(document, page, paper))
                        .as("page %d", page)
                        .isEmpty();
                assertThat(ReadPaper.letters(document, page).text())
                        .contains("Day 0", "Day 6", "page %d of %d".formatted(page, pages));
            }
        }
    }

    @Test
    void a_crew_whose_day_is_longer_than_a_page_goes_on_on_the_next() throws IOException {
        byte[] pdf = WeekPaper.pdf(plan(2, 1, 30, 3), Paper.A3);

        String text = ReadPaper.flat(ReadPaper.text(pdf));
        assertThat(text).contains("goes on", name(0, 1, 29, 2));
        try (var document = Loader.loadPDF(pdf)) {
            for (int page = 1; page <= document.getNumberOfPages(); page++)
                assertThat(ReadPaper.outside(document, page, Paper.A3)).isEmpty();
        }
    }

    @Test
    void two_weeks_are_two_tables() throws IOException {
        try (var document = Loader.loadPDF(WeekPaper.pdf(plan(10, 2, 1, 2), Paper.A3))) {
            assertThat(document.getNumberOfPages()).isEqualTo(2);
            assertThat(ReadPaper.letters(document, 1).text()).contains("Day 6").doesNotContain("Day 7");
            assertThat(ReadPaper.letters(document, 2).text()).contains("Day 9");
        }
    }

    @Test
    void the_code_opens_the_sheet_as_it_is_by_then() throws Exception {
        assertThat(ReadPaper.codes(WeekPaper.pdf(plan(5, 3, 2, 4), Paper.TABLOID)))
                .containsExactly(LINK);
    }
}
