package drylap.tables;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.DateUtil;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Workbooks as Apache POI reads them. */
class WorkbookTests {
    private static XSSFSheet written(Table table) throws IOException {
        return new XSSFWorkbook(new ByteArrayInputStream(Workbook.xlsx(table))).getSheetAt(0);
    }

    private static XSSFCell only(Cell cell) throws IOException {
        return written(new Table("One", List.of("Head"), List.of(List.of(cell))))
                .getRow(1)
                .getCell(0);
    }

    @Test
    void numbers_days_and_times_are_what_they_are_and_heads_have_their_units() throws IOException {
        var sheet = written(new Table(
                "Not planned: waits [for] rain/dark",
                List.of("Opening", "Length", "Date", "From", "Cost"),
                List.of(
                        List.of(
                                new Cell.Text("Žižkov 1"),
                                new Cell.Number(62.5, "min"),
                                new Cell.Day(LocalDate.of(2026, 3, 29)),
                                new Cell.Time(LocalDateTime.of(2026, 3, 29, 2, 30)),
                                Cell.count(1_234_567)),
                        List.of(new Cell.Text("short")))));

        assertThat(sheet.getSheetName()).isEqualTo("Not planned  waits  for  rain d");
        assertThat(sheet.getRow(0).getCell(1).getStringCellValue()).isEqualTo("Length (min)");
        assertThat(sheet.getRow(0).getCell(4).getStringCellValue()).isEqualTo("Cost");
        var row = sheet.getRow(1);
        assertThat(row.getCell(0).getStringCellValue()).isEqualTo("Žižkov 1");
        assertThat(row.getCell(1).getNumericCellValue()).isEqualTo(62.5);
        assertThat(DateUtil.isCellDateFormatted(row.getCell(2))).isTrue();
        assertThat(row.getCell(2).getLocalDateTimeCellValue().toLocalDate()).isEqualTo(LocalDate.of(2026, 3, 29));
        assertThat(DateUtil.isCellDateFormatted(row.getCell(3))).isTrue();
        assertThat(row.getCell(3).getLocalDateTimeCellValue()).isEqualTo(LocalDateTime.of(2026, 3, 29, 2, 30));
        assertThat(row.getCell(4).getNumericCellValue()).isEqualTo(1_234_567);
        assertThat(DateUtil.isCellDateFormatted(row.getCell(4))).isFalse();
        assertThat(sheet.getRow(2).getPhysicalNumberOfCells()).isEqualTo(1);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "=1+1",
                "+1",
                "-2+3",
                "@SUM(A1)",
                "\t=1",
                "\r=1",
                "=HYPERLINK(\"http://x\",\"y\")",
                "=cmd|' /C calc'!A0"
            })
    void what_looks_like_a_formula_is_text_and_says_so(String words) throws IOException {
        var cell = only(new Cell.Text(words));

        assertThat(cell.getCellType()).isEqualTo(CellType.STRING);
        assertThat(cell.getStringCellValue().strip()).isEqualTo(words.strip());
        assertThat(cell.getCellStyle().getDataFormatString()).isEqualTo("@");
    }

    @Test
    void a_head_that_looks_like_a_formula_is_text_too() throws IOException {
        var head =
                written(new Table("One", List.of("=1+1"), List.of())).getRow(0).getCell(0);

        assertThat(head.getCellType()).isEqualTo(CellType.STRING);
        assertThat(head.getStringCellValue()).isEqualTo("=1+1");
    }

    @Test
    void letters_that_no_workbook_has_and_what_is_too_long_do_not_break_it() throws IOException {
        assertThat(only(new Cell.Text("a\u0000\u0007b\uD800c <&> \uD83E\uDE9F")).getStringCellValue())
                .isEqualTo("abc <&> \uD83E\uDE9F");
        assertThat(only(new Cell.Text("x".repeat(40_000))).getStringCellValue()).hasSize(Workbook.LONGEST_TEXT);
        assertThat(only(new Cell.Number(Double.NaN, "h")).getStringCellValue()).isEqualTo("not known");
    }

    @Test
    void different_units_in_a_column_are_not_put_into_its_head() {
        var table = new Table(
                "Mixed",
                List.of("Size"),
                List.of(List.of(new Cell.Number(1, "mm")), List.of(new Cell.Number(1, "in"))));

        assertThat(table.head(0)).isEqualTo("Size");
    }

    @Test
    void a_row_that_is_longer_than_the_heads_is_refused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Table("Wide", List.of("One"), List.of(List.of(Cell.count(1), Cell.count(2)))))
                .withMessageContaining("a row of 2 cells under 1 heads");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            Quay Nine           | Not planned: rain | quay-nine_not-planned-rain_2026-04-13.xlsx
            Žižkov / Łódź       | Ledger            | žižkov-łódź_ledger_2026-04-13.xlsx
            ../../etc           | a"b\\c            | etc_a-b-c_2026-04-13.xlsx
            ''                  | Visits            | drylap_visits_2026-04-13.xlsx
            """)
    void the_name_of_the_file_says_where_what_and_when(String where, String what, String name) {
        assertThat(Workbook.fileName(where, what, LocalDate.of(2026, 4, 13))).isEqualTo(name);
    }
}
