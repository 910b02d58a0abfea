package drylap.windowschedule.files;

import static org.assertj.core.api.Assertions.assertThat;

import drylap.windowschedule.Field;
import drylap.windowschedule.FileReading;
import drylap.windowschedule.Header;
import drylap.windowschedule.Sheet;
import drylap.windowschedule.SiteWithWalls;
import drylap.windowschedule.Templates;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import org.dhatim.fastexcel.Workbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ScheduleFileTests {
    private static final String SHEET = "xl/worksheets/sheet1.xml";

    private static FileReading read(String text, Charset charset) {
        return ScheduleFile.read("schedule.csv", text.getBytes(charset));
    }

    private static List<Sheet.Row> rows(FileReading reading) {
        return ((FileReading.Read) reading).sheets().getFirst().rows();
    }

    private static String wrong(byte[] bytes) {
        return ScheduleFile.read("schedule.xlsx", bytes) instanceof FileReading.Refused refused
                ? refused.text()
                : "read";
    }

    /** The workbook of the tests with one part rewritten. */
    private static byte[] with(String part, UnaryOperator<byte[]> rewritten) throws IOException {
        var out = new ByteArrayOutputStream();
        try (var in = new ZipInputStream(new ByteArrayInputStream(SiteWithWalls.sixHundred()));
                var zip = new ZipOutputStream(out)) {
            for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
                zip.putNextEntry(new ZipEntry(entry.getName()));
                byte[] bytes = in.readAllBytes();
                zip.write(entry.getName().equals(part) ? rewritten.apply(bytes) : bytes);
            }
        }
        return out.toByteArray();
    }

    private static UnaryOperator<byte[]> text(UnaryOperator<String> rewritten) {
        return bytes ->
                rewritten.apply(new String(bytes, StandardCharsets.UTF_8)).getBytes(StandardCharsets.UTF_8);
    }

    @ParameterizedTest
    @ValueSource(strings = {",", ";", "\t"})
    void cells_are_parted_by_comma_semicolon_or_tab(String parted) {
        String text = "Mark,Width,Remarks\nA,36 1/2\",\"two, or; three\"\n\nB,3'-0\",\n"
                .replace("k,W", "k" + parted + "W")
                .replace("h,R", "h" + parted + "R")
                .replace("A,3", "A" + parted + "3")
                .replace("\",\"", "\"" + parted + "\"")
                .replace("B,3", "B" + parted + "3")
                .replace("0\",", "0\"" + parted);
        assertThat(rows(read(text, StandardCharsets.UTF_8)))
                .containsExactly(
                        new Sheet.Row(1, List.of("Mark", "Width", "Remarks")),
                        new Sheet.Row(2, List.of("A", "36 1/2\"", "two, or; three")),
                        new Sheet.Row(4, List.of("B", "3'-0\"", "")));
    }

    @Test
    void decimal_commas_do_not_part_cells_where_semicolons_do() {
        assertThat(rows(read("Mark;Width;Height\nA;1,5;2,5\nB;1,5;2,5\n", StandardCharsets.UTF_8))
                        .getLast()
                        .cells())
                .containsExactly("B", "1,5", "2,5");
    }

    @Test
    void a_file_is_utf_8_with_or_without_a_mark_or_else_windows_1252() {
        String text = "Mark,Fa\u00e7ade,Width\nA,West,36\u00bd\u201d\n";
        for (FileReading reading : List.of(
                read(text, StandardCharsets.UTF_8),
                read("\uFEFF" + text, StandardCharsets.UTF_8),
                read(text, Charset.forName("windows-1252"))))
            assertThat(rows(reading).getFirst().cells()).containsExactly("Mark", "Fa\u00e7ade", "Width");
    }

    @Test
    void the_templates_open_and_every_title_of_them_is_known() {
        for (var template : Templates.all()) {
            Sheet sheet = ((FileReading.Read) ScheduleFile.read(template.name(), template.bytes()))
                    .sheets()
                    .getFirst();
            assertThat(Header.find(sheet).orElseThrow().columns())
                    .hasSize(sheet.columns())
                    .containsKeys(Field.MARK, Field.FRAME_WIDTH, Field.X_POSITION, Field.REMARKS);
        }
    }

    @Test
    void a_formula_stands_for_what_was_last_worked_out() {
        Sheet.Row second =
                rows(ScheduleFile.read("s.xlsx", SiteWithWalls.sixHundred())).get(4);
        assertThat(second.number()).isEqualTo(6);
        // =24+24+2+1 + 3/16
        assertThat(second.cell(4)).isEqualTo("51.1875");
    }

    /** Whoever writes without going back puts sizes behind the parts, of 64 bits, though nothing says so before them. */
    @Test
    void a_workbook_that_was_written_in_one_go_is_read() throws IOException {
        var out = new ByteArrayOutputStream();
        try (var book = new Workbook(out, "Test", "1.0")) {
            var sheet = book.newWorksheet("Windows");
            sheet.value(0, 0, "Mark");
            sheet.value(1, 0, "W-1");
        }
        assertThat(rows(ScheduleFile.read("s.xlsx", out.toByteArray())))
                .extracting(row -> row.cell(0))
                .containsExactly("Mark", "W-1");
    }

    @Test
    void a_bomb_is_refused_before_it_goes_off() throws IOException {
        byte[] blanks = new byte[40 << 20];
        Arrays.fill(blanks, (byte) ' ');
        assertThat(wrong(with(SHEET, _ -> blanks)))
                .contains("part " + SHEET, "unpacks to more than 200 times its size");
        assertThat(wrong(with("xl/media/other.bin", bytes -> bytes))).isEqualTo("read");
        var small = new FileLimits(1 << 20, 1_000, 200, 500, 20_000, 200, 1_000);
        assertThat(ScheduleFile.read("s.xlsx", SiteWithWalls.sixHundred(), small))
                .isInstanceOfSatisfying(
                        FileReading.Refused.class,
                        refused -> assertThat(refused.wrong()).isEqualTo("unpacks to too much"));
    }

    @Test
    void a_broken_or_cut_off_workbook_is_refused() throws IOException {
        byte[] whole = SiteWithWalls.sixHundred();
        for (int length : new int[] {4, 100, whole.length / 2})
            assertThat(wrong(Arrays.copyOf(whole, length))).contains("broken or cut off zip file");
        assertThat(wrong(with(SHEET, text(sheet -> sheet.substring(0, sheet.length() / 2)))))
                .contains("is not well-formed");
        assertThat(wrong(with("xl/workbook.xml", text(_ -> "<nothing/>"))))
                .doesNotContain("Exception")
                .isNotEqualTo("read");
        assertThat(wrong(new byte[] {(byte) 0xD0, (byte) 0xCF, 0x11, (byte) 0xE0}))
                .contains("older kind");
        assertThat(wrong(new byte[] {1, 0, 2})).contains("is no text");
    }

    @Test
    void a_cell_that_lies_beyond_all_limits_or_a_document_type_is_refused() throws IOException {
        assertThat(wrong(with(SHEET, text(sheet -> sheet.replaceFirst("r=\"A6\"", "r=\"ZZZZZZZ6\"")))))
                .contains("too many columns");
        assertThat(wrong(with(SHEET, text(sheet -> sheet.replaceFirst("<row r=\"6\"", "<row r=\"999999\"")))))
                .contains("too many");
        assertThat(wrong(with(SHEET, text(sheet -> sheet.replaceFirst("\\?>", "?><!DOCTYPE x [<!ENTITY a \"b\">]>")))))
                .contains("document type");
    }

    @Test
    void too_many_rows_columns_or_characters_are_refused_where_they_stand() {
        var limits = new FileLimits(1 << 20, 1 << 20, 200, 500, 3, 3, 10);
        assertThat(refused("a\nb\nc\nd\n", limits)).contains("row 4", "at most 3 rows");
        assertThat(refused("a,b,c,d\n", limits)).contains("row 1", "at most 3 columns");
        assertThat(refused("a,12345678901\n", limits)).contains("cell B1", "at most 10 characters");
    }

    private static String refused(String csv, FileLimits limits) {
        return ((FileReading.Refused) ScheduleFile.read("s.csv", csv.getBytes(StandardCharsets.UTF_8), limits)).text();
    }
}
