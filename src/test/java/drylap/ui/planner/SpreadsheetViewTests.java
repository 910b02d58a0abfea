package drylap.ui.planner;

import static org.assertj.core.api.Assertions.assertThat;

import com.vaadin.browserless.SpringBrowserlessTest;
import drylap.kernel.FolderId;
import drylap.planning.JobFolders;
import drylap.planning.Plan;
import drylap.planning.PlanRequest;
import drylap.planning.Planner;
import drylap.planning.Plans;
import drylap.security.TestPeople;
import drylap.tables.Cell;
import drylap.tables.Table;
import drylap.tables.Workbook;
import drylap.ui.QuayFolder;
import drylap.ui.components.SpreadsheetLink;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Objects;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.DateUtil;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

/** Tables of screens as spreadsheets, read back by Apache POI. */
@ViewTest
class SpreadsheetViewTests extends SpringBrowserlessTest {
    @Autowired
    private JobFolders folders;

    @Autowired
    private Plans plans;

    @Autowired
    private TestPeople people;

    private FolderId folder = new FolderId(0);
    private Plan plan = Planner.standard()
            .plan(new QuayFolder().folder(), new PlanRequest(null, null, 200L, 1), _ -> {}, () -> false);

    @BeforeEach
    void a_planned_folder_lies_on_the_table() {
        people.signIn(people.scheduler());
        folder = folders.save("quay", new QuayFolder().folder());
        plans.save(folder, plan);
    }

    private SpreadsheetLink link(String what) {
        return find(SpreadsheetLink.class).all().stream()
                .filter(link -> Objects.requireNonNull(link.getElement().getAttribute("aria-label"))
                        .startsWith(what + ","))
                .findFirst()
                .orElseThrow();
    }

    private static XSSFSheet sheet(Table table) throws IOException {
        return new XSSFWorkbook(new ByteArrayInputStream(Workbook.xlsx(table))).getSheetAt(0);
    }

    @Test
    void the_visits_of_the_week_are_a_spreadsheet_with_true_days_times_and_minutes() throws IOException {
        navigate(WeekSheetView.class);

        var sheet = sheet(link("Visits").table());

        assertThat(sheet.getLastRowNum()).isEqualTo(plan.visits().size());
        assertThat(sheet.getRow(0).getCell(4).getStringCellValue()).isEqualTo("Time it takes (min)");
        var row = sheet.getRow(1);
        assertThat(DateUtil.isCellDateFormatted(row.getCell(1))).isTrue();
        var from = row.getCell(2).getLocalDateTimeCellValue();
        var until = row.getCell(3).getLocalDateTimeCellValue();
        assertThat(row.getCell(4).getNumericCellValue())
                .isEqualTo(java.time.Duration.between(from, until).toMinutes());
        assertThat(from.toLocalDate())
                .isEqualTo(row.getCell(1).getLocalDateTimeCellValue().toLocalDate());
    }

    @Test
    void the_ledger_is_a_spreadsheet_whose_costs_add_up() throws IOException {
        navigate(WeekSheetView.class);

        var sheet = sheet(link("Ledger").table());

        double sum = 0;
        int last = sheet.getLastRowNum();
        for (int i = 1; i < last; i++) sum += sheet.getRow(i).getCell(3).getNumericCellValue();
        assertThat(sheet.getRow(last).getCell(3).getCellType()).isEqualTo(CellType.NUMERIC);
        assertThat(sheet.getRow(last).getCell(3).getNumericCellValue())
                .isEqualTo(sum)
                .isEqualTo(plan.ledger().soft());
        assertThat(sheet.getRow(0).getLastCellNum()).isEqualTo((short) 4);
    }

    @Test
    void the_link_gives_the_file_itself() throws IOException {
        navigate(JobFoldersView.class);
        var out = new ByteArrayOutputStream();

        test(link("Job folders")).download(out);

        var sheet = new XSSFWorkbook(new ByteArrayInputStream(out.toByteArray())).getSheetAt(0);
        assertThat(sheet.getRow(1).getCell(0).getStringCellValue()).isEqualTo("quay");
        assertThat(sheet.getRow(1).getCell(3).getNumericCellValue())
                .isEqualTo(new QuayFolder().folder().openings().size());
    }

    /** At Quay Nine it rains on Monday from noon to two, and the forecast ends on Tuesday at noon: 48 hours, 36 of them told. */
    @Test
    void the_hours_that_a_script_draws_are_a_workbook_of_numbers_and_times() throws IOException {
        navigate(OpenHoursView.class);

        var sheet = sheet(link("Hour by hour, Quay Nine, west").table());

        assertThat(sheet.getLastRowNum()).isEqualTo(48);
        assertThat(sheet.getRow(0).getCell(1).getStringCellValue()).isEqualTo("Rain (mm)");
        assertThat(sheet.getRow(1).getCell(0).getLocalDateTimeCellValue()).isEqualTo("2026-04-13T00:00");
        assertThat(sheet.getRow(13).getCell(0).getLocalDateTimeCellValue()).isEqualTo("2026-04-13T12:00");
        assertThat(sheet.getRow(13).getCell(1).getNumericCellValue()).isEqualTo(1.0);
        assertThat(sheet.getRow(13).getCell(2).getNumericCellValue()).isEqualTo(80);
        assertThat(sheet.getRow(13).getCell(3).getStringCellValue()).isEqualTo("counts");
        assertThat(sheet.getRow(36).getCell(1).getNumericCellValue()).isZero();
        assertThat(sheet.getRow(37).getCell(1).getStringCellValue()).isEqualTo("beyond the forecast: climate only");
        assertThat(sheet.getRow(37).getCell(2)).isNull();
    }

    /** Whatever lies on a screen now: the check of the classes cannot see which panel a view shows. */
    @Test
    void what_a_spreadsheet_holds_is_what_its_table_shows() {
        navigate(WeekSheetView.class);

        assertThat(find(SpreadsheetLink.class).all())
                .hasSizeGreaterThanOrEqualTo(2)
                .allSatisfy(link -> {
                    Table table = link.table();
                    assertThat(table.heads()).isNotEmpty().noneMatch(String::isBlank);
                    assertThat(table.rows())
                            .isNotEmpty()
                            .allMatch(row -> row.size() == table.heads().size());
                    assertThat(table.rows().getFirst().getFirst()).isNotEqualTo(new Cell.Text(""));
                });
    }
}
