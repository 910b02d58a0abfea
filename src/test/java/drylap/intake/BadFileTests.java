package drylap.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BadFileTests {
    private static final String TRAVEL_HEADER = "the header from,to,minutes is accepted";

    final SmallFolder small = new SmallFolder();

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        sites.csv    | site,name,latitude,longitude,time_zone,terrain,address
        facades.csv  | site,facade,azimuth_deg,handover_due
        openings.csv | site,facade,level,opening,width_mm,height_mm,frame,method,approach,second_layer,delivered_on,water_test,priority,done,done_at,finished
        crews.csv    | crew,trade,methods,latitude,longitude,time_zone,people
        shifts.csv   | crew,date,start,end,break_start,break_end,overtime_until
        labour.csv   | task,method,fixed_min,per_m2_min,pan_min,setup_site_min,setup_facade_min,setup_level_min
        """)
    void a_required_file_that_is_missing_or_empty_is_the_only_problem(String file, String header) {
        assertThat(small.without(file).problems())
                .containsExactly("%s: is missing – a CSV file with the header %s is accepted".formatted(file, header));
        assertThat(small.text(file, " \n").problems())
                .containsExactly("%s: is empty – a CSV file with the header %s is accepted".formatted(file, header));
    }

    @Test
    void a_required_file_without_rows_is_refused() {
        small.text("shifts.csv", "crew,date,start,end\n");
        assertThat(small.problems()).containsExactly("shifts.csv: has no rows – at least one row is accepted");
    }

    @Test
    void an_unknown_column_is_refused() {
        assertThat(small.text("travel.csv", "from,to,minutes,road\nC1,S1,12,B7\n")
                        .problems())
                .containsExactly("travel.csv:1 road: is not a column of this file – " + TRAVEL_HEADER);
    }

    @Test
    void a_missing_column_is_refused() {
        assertThat(small.text("travel.csv", "from,to\nC1,S1\n").problems())
                .containsExactly("travel.csv:1 minutes: is missing from the header – " + TRAVEL_HEADER);
    }

    @Test
    void a_column_that_stands_twice_is_refused() {
        assertThat(small.text("travel.csv", "from,to,minutes,to\nC1,S1,12,S1\n").problems())
                .containsExactly("travel.csv:1 to: stands twice in the header – " + TRAVEL_HEADER);
    }

    @Test
    void a_column_without_a_name_is_refused() {
        assertThat(small.text("travel.csv", "from,to,minutes,\nC1,S1,12,\n").problems())
                .containsExactly("travel.csv:1 header: is not a column of this file – " + TRAVEL_HEADER);
    }

    @Test
    void a_line_with_too_few_or_too_many_cells_is_refused() {
        small.append("travel.csv", "C1,S1").append("travel.csv", "C1,S1,12,13");
        assertThat(small.problems())
                .containsExactly(
                        "travel.csv:4: has the wrong number of cells (2) – a line of 3 cells as in the header is accepted",
                        "travel.csv:5: has the wrong number of cells (4) – a line of 3 cells as in the header is accepted");
    }

    @Test
    void quotes_that_do_not_pair_up_are_refused() {
        assertThat(small.append("travel.csv", "C1,\"S1,12").problems())
                .containsExactly("travel.csv:4: has quotes that do not pair up – "
                        + "a cell in \"quotes\" with each inner quote doubled is accepted");
    }

    @Test
    void bytes_that_are_not_utf_8_are_refused_with_their_line() {
        String latin = new String(small.bytes("sites.csv"), StandardCharsets.UTF_8).replace("Quay", "Kärn");
        assertThat(small.bytes("sites.csv", latin.getBytes(StandardCharsets.ISO_8859_1))
                        .problems())
                .containsExactly("sites.csv:2: is not UTF-8 (byte 0xE4) – a file in UTF-8 is accepted");
    }

    @Test
    void all_problems_of_a_folder_come_together_in_the_order_of_files_and_lines() {
        small.without("labour.csv");
        small.change("openings.csv", "O1,900,1200", "O1,0,wide").change("openings.csv", "tuck", "tucked");
        small.change("shifts.csv", "17:00", "later").change("crews.csv", "siding", "sidings");
        assertThat(small.problems())
                .containsExactly(
                        "openings.csv:2 width_mm: is too small (0) – a whole number of mm from 100 to 20000 is accepted",
                        "openings.csv:2 height_mm: is not a whole number (wide) – a whole number of mm from 100 to 20000 is accepted",
                        "openings.csv:3 second_layer: is unknown (tucked) – one of none, tuck, drain-between is accepted",
                        "crews.csv:3 trade: is unknown (sidings) – one of window, tester, wrap, siding is accepted",
                        "shifts.csv:2 overtime_until: is not a time of day (later) – a time such as 07:30, from 00:00 to 23:59, is accepted",
                        "labour.csv: is missing – a CSV file with the header task,method,fixed_min,per_m2_min,pan_min,setup_site_min,setup_facade_min,setup_level_min is accepted");
    }

    @Test
    void very_many_problems_are_cut_and_counted() {
        small.text(
                "travel.csv",
                IntStream.range(0, 5000)
                        .mapToObj(_ -> "C1,S1,-1\n")
                        .collect(Collectors.joining("", "from,to,minutes\n", "")));
        var refused = (FolderReading.Refused) small.read();
        assertThat(refused.problems()).hasSize(200);
        assertThat(refused.text()).endsWith("\n… and 4800 more");
    }

    @Test
    void a_long_or_unprintable_value_is_cut_and_made_visible() {
        small.change("sites.csv", "Quay house", "\"Quay\u0007" + "x".repeat(300) + "\"");
        assertThat(small.problems())
                .containsExactly("sites.csv:2 name: holds a control character (Quay\\u0007" + "x".repeat(75)
                        + "…) – a name of 1 to 100 characters without spaces around it is accepted");
    }

    @Test
    void a_file_over_the_limit_is_refused_by_its_size(@TempDir Path folder) throws IOException {
        for (var file : small.files().entrySet()) Files.write(folder.resolve(file.getKey()), file.getValue());
        try (RandomAccessFile openings =
                new RandomAccessFile(folder.resolve("openings.csv").toFile(), "rw")) {
            openings.setLength(200L << 20);
        }
        var refused = (FolderReading.Refused) FolderReader.read(FolderSource.of(folder));
        assertThat(refused.text())
                .isEqualTo("openings.csv: is too large (200 MiB) – a file of at most 64 MiB is accepted");
    }

    @Test
    void a_folder_that_is_not_there_is_refused() {
        var refused = (FolderReading.Refused) FolderReader.read(FolderSource.of(Path.of("no/such/folder")));
        assertThat(refused.text()).isEqualTo("no/such/folder: does not exist – a folder or a zip file is accepted");
    }

    @Test
    void a_file_that_yields_more_than_it_says_is_cut_off_and_refused() {
        FolderSource lying = new FolderSource() {
            final FolderSource honest = FolderSource.inMemory("test", small.files());

            @Override
            public String describe() {
                return "lying";
            }

            @Override
            public Set<String> files() {
                return honest.files();
            }

            @Override
            public InputStream open(String file) throws IOException {
                return honest.open(file);
            }

            @Override
            public long size(String file) {
                return 1;
            }
        };
        var refused = (FolderReading.Refused) FolderReader.read(lying, new Limits(150, 1000, 10));
        assertThat(refused.text())
                .contains("labour.csv: is too large (more than it says) – a file of at most 150 bytes is accepted");
    }
}
