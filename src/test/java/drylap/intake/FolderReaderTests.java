package drylap.intake;

import static org.assertj.core.api.Assertions.assertThat;

import drylap.assembly.Approach;
import drylap.assembly.Frame;
import drylap.assembly.Method;
import drylap.assembly.SecondLayer;
import drylap.crews.Crew;
import drylap.crews.TravelTimes.Leg;
import drylap.kernel.FacadeId;
import drylap.kernel.OpeningId;
import drylap.kernel.Rule;
import drylap.kernel.SiteId;
import drylap.planning.JobFolder;
import drylap.sites.Opening;
import drylap.sites.Terrain;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Arrays;
import org.junit.jupiter.api.Test;

class FolderReaderTests {
    final SmallFolder small = new SmallFolder();

    @Test
    void every_cell_of_an_opening_arrives() {
        assertThat(small.sound().folder().openings().getFirst())
                .isEqualTo(new Opening(
                        new OpeningId("O1"),
                        new FacadeId(new SiteId("S1"), "W"),
                        1,
                        900,
                        1200,
                        Frame.VINYL,
                        Method.A,
                        Approach.DRAINAGE,
                        SecondLayer.NONE,
                        LocalDate.of(2026, 4, 13),
                        true,
                        2,
                        4,
                        Instant.parse("2026-04-12T22:30:00Z")));
    }

    @Test
    void every_file_arrives() {
        JobFolder folder = small.sound().folder();
        assertThat(folder.sites().getFirst().terrain()).isEqualTo(Terrain.II);
        assertThat(folder.facades().getFirst().handoverDue()).isEqualTo("2026-04-17");
        assertThat(folder.crews().getFirst().methods()).containsExactlyInAnyOrder(Method.A, Method.B1);
        assertThat(folder.shifts().getFirst().limit()).isEqualTo("2026-04-14T00:00:00Z");
        assertThat(folder.travel().given())
                .containsEntry(new Leg("C1", "S1"), 12)
                .containsEntry(new Leg("S1", "C1"), 14);
        assertThat(folder.forecasts().getFirst().hours().getLast().windMs()).isEqualTo(4.5);
        assertThat(folder.labour().rows().getFirst().perM2Min()).isEqualTo(new BigDecimal("10.50"));
        assertThat(folder.rules().everywhere().value(Rule.DRYING_H)).isEqualTo(4);
        assertThat(folder.published().getFirst().pinned()).isTrue();
    }

    @Test
    void what_may_be_absent_may_be_absent() {
        small.without("travel.csv").without("rules.csv").without("published.csv");
        small.text(
                "sites.csv", "site,name,latitude,longitude,time_zone\nS1,Quay house,47.2,-124.2,America/Los_Angeles\n");
        JobFolder folder = small.sound().folder();
        assertThat(folder.sites().getFirst().terrain()).isEqualTo(Terrain.III);
        assertThat(folder.travel().given()).isEmpty();
        assertThat(folder.published()).isEmpty();
    }

    @Test
    void an_address_and_how_many_a_crew_are_may_be_told_and_stand_where_they_stood_once_written() {
        small.change("sites.csv", "terrain", "terrain,address")
                .change("sites.csv", ",II", ",II,\"1 Invented Quay, gate 2;  ZZ 00001\nSample land\"")
                .change("crews.csv", "time_zone", "time_zone,people")
                .change(
                        "crews.csv",
                        "C1,window,A;B1,47.21,-124.2,America/Los_Angeles",
                        "C1,window,A;B1,47.21,-124.2,America/Los_Angeles,3")
                .change(
                        "crews.csv",
                        "C2,siding,,47.21,-124.2,America/Los_Angeles",
                        "C2,siding,,47.21,-124.2,America/Los_Angeles,");
        JobFolder folder = small.sound().folder();
        assertThat(folder.sites().getFirst().address().lines())
                .containsExactly("1 Invented Quay, gate 2", "ZZ 00001", "Sample land");
        assertThat(folder.crews()).extracting(Crew::people).containsExactly(3, null);
        assertThat(SiteRows.write(folder.sites()).text())
                .endsWith("II,\"1 Invented Quay, gate 2; ZZ 00001; Sample land\"\n");
        assertThat(CrewRows.write(folder.crews()).text()).contains("time_zone,people\n", "America/Los_Angeles,3\n");
    }

    @Test
    void an_address_or_a_number_of_people_that_cannot_be_is_named_at_its_cell() {
        small.change("sites.csv", "terrain", "terrain,address")
                .change("sites.csv", ",II", ",II," + "x".repeat(81))
                .change("crews.csv", "time_zone", "time_zone,people")
                .change("crews.csv", "47.21,-124.2,America/Los_Angeles", "47.21,-124.2,America/Los_Angeles,21");
        assertThat(small.problems())
                .satisfiesExactly(
                        address -> assertThat(address)
                                .startsWith("sites.csv:2 address: has 81 characters in line 1 (xxx")
                                .endsWith("an address of up to 6 lines of up to 80 characters, "
                                        + "parted by line breaks or ; is accepted"),
                        people -> assertThat(people)
                                .startsWith("crews.csv:2 people: ")
                                .endsWith("(21) – a whole number of people from 1 to 20 is accepted"),
                        people -> assertThat(people).startsWith("crews.csv:3 people: "));
    }

    /** Whoever reads folders with an older Drylap reads what is written of them today. */
    @Test
    void columns_in_which_nothing_would_stand_are_not_written() {
        JobFolder folder = small.sound().folder();
        assertThat(SiteRows.write(folder.sites()).text())
                .startsWith("site,name,latitude,longitude,time_zone,terrain\n");
        assertThat(CrewRows.write(folder.crews()).text())
                .startsWith("crew,trade,methods,latitude,longitude,time_zone\n");
    }

    @Test
    void columns_may_stand_in_any_order() {
        JobFolder usual = small.sound().folder();
        small.text("travel.csv", "minutes,to,from\n12,S1,C1\n14,C1,S1\n");
        assertThat(small.sound().folder()).isEqualTo(usual);
    }

    @Test
    void line_ends_blank_lines_and_a_byte_order_mark_do_not_matter() {
        JobFolder usual = small.sound().folder();
        String text = new String(small.bytes("openings.csv"), StandardCharsets.UTF_8);
        small.text("openings.csv", "\uFEFF" + text.replace("\n", "\r\n") + "\r\n");
        assertThat(small.sound().folder()).isEqualTo(usual);
    }

    @Test
    void quoted_cells_may_hold_commas_quotes_and_letters_of_any_script() {
        small.change("sites.csv", "Quay house", "\"Käthe's \"\"Quay\"\", 港 house\"");
        assertThat(small.sound().folder().sites().getFirst().name()).isEqualTo("Käthe's \"Quay\", 港 house");
    }

    @Test
    void a_line_number_counts_lines_not_records() {
        small.append("travel.csv", "\nC1,S1,\"-1\"");
        assertThat(small.problems())
                .containsExactly(
                        "travel.csv:5 minutes: is negative (-1) – a whole number of minutes from 0 to 10000 is accepted");
    }

    @Test
    void forecast_rows_out_of_order_are_sorted() {
        JobFolder usual = small.sound().folder();
        String[] lines = new String(small.bytes("forecast.csv"), StandardCharsets.UTF_8).split("\n");
        small.text("forecast.csv", String.join("\n", Arrays.asList(lines[0], lines[2], lines[1])));
        assertThat(small.sound().folder()).isEqualTo(usual);
    }

    @Test
    void a_forecast_that_is_absent_is_noted() {
        assertThat(small.without("forecast.csv").sound().notes())
                .containsExactly("site S1: no forecast; every hour is marked beyond the forecast");
        assertThat(small.sound().folder().forecasts().getFirst().hours()).isEmpty();
    }

    @Test
    void a_forecast_that_is_empty_is_noted() {
        assertThat(small.text("forecast.csv", "").sound().notes())
                .containsExactly("site S1: no forecast; every hour is marked beyond the forecast");
    }

    @Test
    void a_forecast_that_ends_early_is_noted() {
        assertThat(small.sound().notes())
                .containsExactly("site S1: the forecast ends at 2026-04-13T09:00-07:00, before the last shift; "
                        + "later hours are marked beyond the forecast");
    }

    @Test
    void an_unknown_file_is_ignored_with_a_note() {
        assertThat(small.text("README.md", "hello").sound().notes())
                .contains("README.md is not a file of a job folder and was ignored");
    }

    @Test
    void an_install_that_was_completed_since_may_still_stand_in_the_published_plan() {
        small.change("openings.csv", "tuck,2026-04-13,,,,", "tuck,2026-04-13,,,8,");
        assertThat(small.sound().folder().published()).hasSize(1);
    }

    @Test
    void travel_in_a_circle_is_only_travel() {
        small.append("travel.csv", "S1,S1,0");
        small.append("travel.csv", "C2,C1,5");
        small.append("travel.csv", "C1,C2,5");
        assertThat(small.sound().folder().travel().given()).hasSize(5);
    }
}
